import type { Plan } from '../../../plan/plan.ts';
import { copyText } from '../edit-text.ts';
import { isEditable, lookOf } from '../row-look.ts';
import type { Place } from '../rows-state.ts';

/** A block of cells as the grid counts them. */
interface Range {
  readonly startRow: number;
  readonly startCol: number;
  readonly endRow: number;
  readonly endCol: number;
}

/** What a cell gives the clipboard: what can be typed, as typed; the rest as shown, with the minus other programs read. */
export function clipText({ row, column, facts }: Place, plan: Plan): string {
  if (isEditable(row, column)) return copyText(row, column, facts);
  const { text } = lookOf(row, column, facts, plan);
  return column === 'value' || column === 'offBy' ? text.replace('−', '-') : text;
}

/** Fills the block that goes to the clipboard. */
export function fillClip(
  data: unknown[][],
  ranges: readonly Range[],
  textAt: (at: number, columnNumber: number) => string,
): void {
  const [range] = ranges;
  if (range === undefined) return;
  data.forEach((line, down) => {
    line.forEach((_, across) => {
      line[across] = textAt(range.startRow + down, range.startCol + across);
    });
  });
}

export interface Pasted {
  readonly at: number;
  readonly columnNumber: number;
  readonly typed: string;
}

const textOf = (it: unknown): string => String(it ?? '');

/** Where each text of a pasted block goes: one text fills all that is chosen, a block starts at the first chosen cell. */
export function pastedAt(data: readonly (readonly unknown[])[], ranges: readonly Range[]): readonly Pasted[] {
  const [range] = ranges;
  if (range === undefined) return [];
  const { startRow, startCol, endRow, endCol } = range;
  const isOne = data.length === 1 && data[0]?.length === 1;
  const lines = isOne
    ? Array.from({ length: endRow - startRow + 1 }, () =>
        Array.from({ length: endCol - startCol + 1 }, () => data[0]?.[0]),
      )
    : data;
  return lines.flatMap((line, down) =>
    line.map((text, across) => ({
      at: startRow + down,
      columnNumber: startCol + across,
      typed: textOf(text),
    })),
  );
}
