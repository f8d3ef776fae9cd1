import { extentOf, type TemplatePart } from './part.ts';

export interface Placed {
  readonly part: TemplatePart;
  /** Added to every place of the part, mm. */
  readonly dx: number;
  readonly dy: number;
}

export interface Placing {
  readonly placed: readonly Placed[];
  readonly width: number;
  readonly height: number;
}

/** Room between parts and round them, mm; the title of a part stands under it. */
const GAP = 30;
const ROW = 900;
/** Width of a letter 4 mm high, mm. */
const LETTER = 3.5;

/** Parts side by side in rows, none over another, everything right of and above 0. */
export function placing(parts: readonly TemplatePart[]): Placing {
  const placed: Placed[] = [];
  let [x, y, high, width] = [GAP, GAP, 0, 0];
  for (const part of parts) {
    const it = extentOf(part);
    const wide = Math.max(it.x1 - it.x0, partWords(part).length * LETTER);
    const tall = it.y1 - it.y0;
    if (x > GAP && x + wide > ROW) [x, y, high] = [GAP, y + high + GAP, 0];
    placed.push({ part, dx: x - it.x0, dy: y - it.y0 });
    x += wide + GAP;
    high = Math.max(high, tall);
    width = Math.max(width, x);
  }
  return { placed, width: Math.max(width, 2 * GAP), height: y + high + GAP };
}

/** Letters of what stops the work, and the room over everything that they take, mm. */
export const [STOP_HEIGHT, STOP_ROOM] = [10, 20];

/** What is written under a part. */
export const partWords = ({ title, thick, count }: TemplatePart): string =>
  count === 0
    ? `${title}: to mark, not to cut`
    : `${title}: ${count} off${thick === undefined ? '' : `, ${thick} thick`}`;
