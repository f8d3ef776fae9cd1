import type { Plan } from '../../../plan/plan.ts';
import type { Column } from '../columns.ts';
import { copyText } from '../edit-text.ts';
import type { Facts } from '../facts.ts';
import { isEditable, lookOf } from '../row-look.ts';
import type { GridRow } from '../rows.ts';

/** A block of cells as the grid counts them. */
interface Range {
  readonly startRow: number;
  readonly startCol: number;
  readonly endRow: number;
  readonly endCol: number;
}

export interface Source {
  readonly row: GridRow;
  readonly column: Column;
  readonly facts: Facts;
  readonly plan: Plan;
}

/** What a cell gives the clipboard: what can be typed, as typed; the rest as shown, with the minus other programs read. */
function clipText({ row, column, facts, plan }: Source): string {
  if (isEditable(row, column)) return row.kind === 'new' ? '' : copyText(row, column, facts);
  const { text } = lookOf(row, column, facts, plan);
  return column === 'value' || column === 'offBy' ? text.replace('−', '-') : text;
}

/** Fills the block that goes to the clipboard. */
export function copied(
  data: unknown[][],
  ranges: readonly Range[],
  sourceAt: (row: number, column: number) => Source | '',
): void {
  const [range] = ranges;
  if (range === undefined) return;
  data.forEach((line, down) => {
    line.forEach((_, across) => {
      const source = sourceAt(range.startRow + down, range.startCol + across);
      line[across] = source === '' ? '' : clipText(source);
    });
  });
}

export interface Pasted {
  readonly at: number;
  readonly column: number;
  readonly typed: string;
}

/** Where each text of a pasted block goes: one text fills all that is chosen, a block starts at the first chosen cell. */
export function pasted(data: readonly (readonly unknown[])[], ranges: readonly Range[]): readonly Pasted[] {
  const [range] = ranges;
  if (range === undefined) return [];
  const isOne = data.length === 1 && data[0]?.length === 1;
  if (isOne) {
    const typed = String(data[0]?.[0] ?? '');
    const all: Pasted[] = [];
    for (let at = range.startRow; at <= range.endRow; at++) {
      for (let column = range.startCol; column <= range.endCol; column++) all.push({ at, column, typed });
    }
    return all;
  }
  return data.flatMap((line, down) =>
    line.map((text, across) => ({
      at: range.startRow + down,
      column: range.startCol + across,
      typed: String(text ?? ''),
    })),
  );
}
