import type { Reading, Value } from '../../plan/plan.ts';
import { withUnit } from '../../session/typed-text.ts';
import { bareUnit } from '../parts/length-style.ts';
import type { Column } from './columns.ts';
import type { Facts } from './facts.ts';
import { offByFigure } from './off-by.ts';
import type { GridRow } from './rows.ts';

/** A value as a person could have typed it, to the last digit. */
const plainly = (value: Value): string => {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return value === null ? '' : String(value);
};

/** What an input holds, as text: a formula, what was typed, or the value; `meant` is the unit a bare length has there. */
function inputText(reading: Reading | undefined, unit: string, meant: 'mm' | 'in' | undefined): string {
  if (reading === undefined) return '';
  const { formula, typed, value } = reading;
  if (formula !== undefined) return formula;
  const text = typed ?? plainly(value);
  return unit === 'mm' ? withUnit(text, typed === undefined ? 'mm' : (reading.unit ?? 'mm'), meant) : text;
}

function ownText(facts: Facts, meant: 'mm' | 'in' | undefined): string {
  const { own } = facts;
  if (own?.formula !== undefined) return own.formula;
  const text = plainly(own?.value ?? null);
  // A bare number in an own cell is always in the cell's own unit.
  return own?.unit === 'mm' && text !== '' && meant !== 'mm' ? `${text} mm` : text;
}

function textOf(row: GridRow, column: Column, facts: Facts, meant: 'mm' | 'in' | undefined): string {
  if (row.kind === 'own') {
    if (column === 'label') return facts.own?.label ?? '';
    if (column === 'unit') return facts.own?.unit ?? '';
    return column === 'value' ? ownText(facts, meant) : '';
  }
  if (row.kind !== 'book') return '';
  if (column === 'offBy') return offByFigure(row, facts);
  return column === 'value' ? inputText(facts.reading, row.cell.unit, meant) : '';
}

/** The refused text that stands in a cell of these facts. */
export function refusedIn(
  row: GridRow,
  column: Column,
  facts: Facts,
): { typed: string; why?: string } | undefined {
  if (row.kind === 'new') return column === 'label' ? facts.labelText : undefined;
  switch (column) {
    case 'label':
      return facts.labelText;
    case 'value':
      return facts.valueText;
    case 'unit':
      return facts.unitText;
    case 'offBy':
      return facts.offByText;
    case 'from':
      return undefined;
  }
}

/**
 * The text an editor opens on: what was refused, else what was typed, with its unit where a bare number would now mean
 * another one.
 */
export const editText = (row: GridRow, column: Column, facts: Facts): string =>
  refusedIn(row, column, facts)?.typed ?? textOf(row, column, facts, bareUnit(facts.units));

/** The same for the clipboard, where a length never stands without its unit: it may be pasted in another plan. */
export const copyText = (row: GridRow, column: Column, facts: Facts): string =>
  textOf(row, column, facts, undefined);
