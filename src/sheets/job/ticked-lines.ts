import { type Sheet, styleOf, TICK } from '../page/sheet.ts';

export interface Ticked {
  /** What stands first, heavier. */
  readonly first?: string;
  readonly text: string;
}

const style = 'small';
const LEAST = TICK + 1;

const linesOf = (sheet: Sheet, { first, text }: Ticked, width: number): readonly string[] =>
  sheet.lettering.lines(first === undefined ? text : `${first}: ${text}`, styleOf(style), width);

/** Things to tick off, one under the other in columns; gives back the y under them. */
export function tickedLines(
  sheet: Sheet,
  items: readonly Ticked[],
  x: number,
  y: number,
  width: number,
  columns = 1,
): number {
  const gap = 5;
  const its = (width - gap * (columns - 1)) / columns;
  const room = its - TICK - 2;
  const per = Math.ceil(items.length / columns);
  let lowest = y;
  for (let column = 0; column < columns; column++) {
    const left = x + column * (its + gap);
    let at = y;
    for (const item of items.slice(column * per, (column + 1) * per)) {
      const lines = linesOf(sheet, item, room);
      const high = lines.length * styleOf(style).line;
      sheet.tick(left, at + 0.3);
      const top = at + Math.max(0, (TICK + 0.6 - high) / 2);
      sheet.text(lines.join('\n'), left + TICK + 2, top, { style });
      at += Math.max(LEAST, high + 0.8);
    }
    lowest = Math.max(lowest, at);
  }
  return lowest + 0.5;
}
