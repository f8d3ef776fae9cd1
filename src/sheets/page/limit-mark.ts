import { drawMark, type MarkInput, type MarkSize } from '../../drawings/mark.ts';
import { putPrimitives } from './primitives.ts';
import type { Sheet } from './sheet.ts';

/** Sizes of the mark on paper, mm. */
export const LIMIT_MARK = { board: [16.9, 5.3], cell: [11.1, 3.4] } as const;

/** The peg in its slot, black, its top left corner at `x`, `y`. */
export function limitMark(
  sheet: Sheet,
  input: MarkInput,
  x: number,
  y: number,
  size: MarkSize = 'cell',
): void {
  const { width, primitives } = drawMark(input, size);
  putPrimitives(sheet, primitives, [], { x, y, scale: LIMIT_MARK[size][0] / width, linesToo: true });
}
