import { meet, type Taken } from './region-letters.ts';

interface Spot {
  readonly x: number;
  readonly y: number;
}

/** A figure set into a line: its middle, and how the line lies there, radians. */
export interface LineFigure extends Taken {
  readonly text: string;
  readonly angle: number;
}

/** Places tried along a line are so far apart, px. */
const STRIDE = 6;
/** How straight a line must be under its figure: the way across over the way along. */
const STRAIGHT = 0.96;
/** Room between figures on lines, px. */
const CLEAR = 10;

/** The place so far along a line, px. */
function walker(line: readonly Spot[]): { readonly length: number; readonly at: (along: number) => Spot } {
  const ends = [0];
  for (let i = 1; i < line.length; i++) {
    const [a, b] = [line[i - 1] as Spot, line[i] as Spot];
    ends.push((ends[i - 1] as number) + Math.hypot(b.x - a.x, b.y - a.y));
  }
  return {
    length: ends.at(-1) ?? 0,
    at(along) {
      const i = Math.max(
        1,
        ends.findIndex((it) => it >= along),
      );
      const [a, b] = [line[i - 1] as Spot, line[i] as Spot];
      const [from, to] = [ends[i - 1] as number, ends[i] as number];
      const share = to > from ? (along - from) / (to - from) : 0;
      return { x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share };
    },
  };
}

/** Upright enough to be read with the head on. */
const readable = (angle: number): number =>
  angle > Math.PI / 2 ? angle - Math.PI : angle <= -Math.PI / 2 ? angle + Math.PI : angle;

/**
 * Where a line's figure is set into it: as near to its middle as it runs straight enough and nothing else stands.
 * Undefined when there is no such place.
 */
export function figureOn(
  line: readonly Spot[],
  text: string,
  size: { readonly width: number; readonly height: number },
  inside: (taken: Taken) => boolean,
  taken: readonly Taken[],
): LineFigure | undefined {
  if (line.length < 2) return undefined;
  const { length, at } = walker(line);
  const half = size.width / 2 + 4;
  const tries = Math.floor((length / 2 - half) / STRIDE);
  for (let n = 0; n <= tries; n++) {
    for (const sign of n === 0 ? [1] : [1, -1]) {
      const middle = length / 2 + sign * n * STRIDE;
      const [a, b] = [at(middle - half), at(middle + half)];
      if (Math.hypot(b.x - a.x, b.y - a.y) < 2 * half * STRAIGHT) continue;
      const angle = readable(Math.atan2(b.y - a.y, b.x - a.x));
      const [cos, sin] = [Math.abs(Math.cos(angle)), Math.abs(Math.sin(angle))];
      const figure: LineFigure = {
        text,
        angle,
        x: (a.x + b.x) / 2,
        y: (a.y + b.y) / 2,
        width: size.width * cos + size.height * sin,
        height: size.width * sin + size.height * cos,
      };
      if (inside(figure) && !taken.some((it) => meet(it, figure, CLEAR))) return figure;
    }
  }
  return undefined;
}
