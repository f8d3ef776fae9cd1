import type { Plan, Reading, Value } from '../../plan/plan.ts';
import { piecesOf } from '../parts/show.ts';
import type { Column } from './columns.ts';
import { refusedIn } from './edit-text.ts';
import type { Facts } from './facts.ts';
import { fromWords } from './from-words.ts';
import { hasOffBy, offByFigure } from './off-by.ts';
import { type CellRow, type GridRow, isCellRow } from './rows.ts';

/** What one cell of the table shows, and how it stands. */
export interface Look {
  readonly text: string;
  /** A word beside the text: how the value stands to its limit. */
  readonly word: string;
  /** The form of what it shows, as class names. */
  readonly form: string;
  readonly editable: boolean;
  /** The text was refused and is not what is in use. */
  readonly refused: boolean;
}

const look = (text: string, form: string, more: Partial<Look> = {}): Look => ({
  text,
  word: '',
  form,
  editable: false,
  refused: false,
  ...more,
});

/** Whether a cell takes typing. */
export function isEditable(row: GridRow | undefined, column: Column | undefined): boolean {
  if (row?.kind === 'new') return column === 'label';
  if (row?.kind === 'own') return column === 'label' || column === 'value' || column === 'unit';
  if (row?.kind !== 'book' || row.cell.kind === 'result') return false;
  return column === 'value' || (column === 'offBy' && hasOffBy(row));
}

const EDGE: Readonly<Record<Reading['origin'], string>> = {
  reading: 'reading',
  manual: 'manual',
  'stand-in': 'stand-in',
  assumed: 'stand-in',
  choice: 'choice',
};

/** The edge of a value's field, which says where it comes from. */
function edgeOf(row: CellRow, facts: Facts): string {
  if (row.kind === 'own') return facts.own?.formula === undefined ? 'reading' : 'formula';
  if (facts.reading === undefined) return 'formula';
  if (facts.reading.formula === undefined) return EDGE[facts.reading.origin];
  return facts.standIn ? EDGE['stand-in'] : 'formula';
}

/** The value in use, base units: a reading's own while the engine is still loading. */
export function valueInUse(facts: Facts): Value {
  if (facts.answer !== undefined) return facts.answer.value;
  return facts.reading?.value ?? facts.own?.value ?? null;
}

const unitOf = (row: CellRow, facts: Facts): string =>
  row.kind === 'book' ? row.cell.unit : (facts.own?.unit ?? '–');

const isEmpty = (facts: Facts): boolean =>
  facts.reading !== undefined && facts.reading.formula === undefined && facts.reading.value === null;

/** What stands where there is no value. */
function withoutValue(row: CellRow, facts: Facts): Look {
  const edge = edgeOf(row, facts);
  if (row.kind === 'own' && facts.own?.formula === undefined) return look('', `box ${edge}`);
  if (isEmpty(facts)) return look('', `box ${edge}`, { word: 'empty' });
  if (!facts.ready) return look('', 'plain');
  const state = facts.limit?.verdict.state;
  return state === 'does not apply' ? look('', 'plain', { word: state }) : look('no answer', 'no-answer');
}

function valueLook(row: CellRow, facts: Facts): Look {
  if (facts.valueText !== undefined) {
    return look(facts.valueText.typed, 'box refused', { word: 'refused', refused: true });
  }
  const value = valueInUse(facts);
  if (value === null) return withoutValue(row, facts);
  const [piece] = piecesOf(value, unitOf(row, facts), facts.units);
  const figure = piece?.figure ?? '';
  const edge = edgeOf(row, facts);
  if (edge !== 'formula') return look(figure, `box ${edge}`);
  const state = facts.limit?.verdict.state;
  if (state === 'outside' || state === 'near') return look(figure, state, { word: state });
  return look(figure, 'plain');
}

function unitLook(row: CellRow, facts: Facts): Look {
  if (facts.unitText !== undefined) {
    return look(facts.unitText.typed, 'box refused', { refused: true });
  }
  const unit = unitOf(row, facts);
  const value = valueInUse(facts);
  if (typeof value === 'boolean' || typeof value === 'string') return look('', 'soft');
  const [first, second] = piecesOf(value ?? 0, unit, facts.units);
  const inches = value === null || second === undefined ? '' : `${second.figure} ${second.unit}`;
  return look(first?.unit ?? '', 'soft', { word: inches });
}

function cellLook(row: CellRow, column: Column, facts: Facts, plan: Plan): Look {
  const refused = refusedIn(row, column, facts);
  switch (column) {
    case 'label': {
      if (refused !== undefined) return look(refused.typed, 'box refused', { refused: true });
      return look(row.kind === 'book' ? row.cell.label : (facts.own?.label ?? row.name), 'plain');
    }
    case 'value':
      return valueLook(row, facts);
    case 'unit':
      return unitLook(row, facts);
    case 'offBy': {
      if (refused !== undefined) return look(refused.typed, 'box refused', { refused: true });
      return look(row.kind === 'book' ? offByFigure(row, facts) : '', 'soft');
    }
    case 'from':
      return look(fromWords(row, facts, plan), 'soft');
  }
}

const INVITATION = 'Name a cell of your own';

/** What a cell of the table shows. */
export function lookOf(row: GridRow, column: Column, facts: Facts, plan: Plan): Look {
  if (isCellRow(row)) return { ...cellLook(row, column, facts, plan), editable: isEditable(row, column) };
  if (column !== 'label') return look('', 'none');
  if (row.kind !== 'new') return look(row.title, `head ${row.kind}`);
  const refused = facts.labelText;
  return refused === undefined
    ? look(INVITATION, 'soft', { editable: true })
    : look(refused.typed, 'box refused', { editable: true, refused: true });
}

const DECIMALS = 2;

/** What stands unseen after a figure so that decimal points lie under one another down the column. */
export function afterFigure(figure: string): string {
  if (!/^−?\d+(\.\d+)?$/.test(figure)) return '';
  const decimals = figure.split('.')[1]?.length ?? 0;
  const rest = '0'.repeat(Math.max(0, DECIMALS - decimals));
  return decimals === 0 ? `.${rest}` : rest;
}
