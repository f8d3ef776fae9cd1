import { bow, type Outline, type Segment } from './outline.ts';

const TOKEN = /[MLAZ]|-?\d*\.?\d+(?:e[+-]?\d+)?/gi;
const TAKES: Readonly<Record<string, number>> = { M: 2, L: 2, A: 7, Z: 0 };

/** The rest of a circle's bow from one place to another, as SVG's arc command means it (SVG 2, appendix B.2.4). */
function arc(
  [x0, y0]: readonly [number, number],
  [given, , , large, sweep, x, y]: readonly number[],
): Segment[] {
  const [x1, y1] = [x ?? x0, y ?? y0];
  const chord = Math.hypot(x1 - x0, y1 - y0);
  if (chord === 0 || !given) return [['L', x1, y1]];
  const r = Math.max(Math.abs(given), chord / 2);
  const rise = Math.sqrt(Math.max(0, r * r - (chord * chord) / 4)) * (large === sweep ? -1 : 1);
  const cx = (x0 + x1) / 2 - (rise * (y1 - y0)) / chord;
  const cy = (y0 + y1) / 2 + (rise * (x1 - x0)) / chord;
  const from = Math.atan2(y0 - cy, x0 - cx);
  let to = Math.atan2(y1 - cy, x1 - cx);
  if (sweep && to < from) to += 2 * Math.PI;
  if (!sweep && to > from) to -= 2 * Math.PI;
  return bow(cx, cy, r, from, to);
}

/** Reads path text of M, L, A (circles only) and Z, all absolute, as the drawings write it. Throws on anything else. */
export function outlineOfPath(d: string): Outline {
  const tokens = d.match(TOKEN) ?? [];
  const out: Segment[] = [];
  let at: readonly [number, number] = [0, 0];
  for (let i = 0; i < tokens.length; ) {
    const letter = tokens[i++] ?? '';
    const takes = TAKES[letter];
    if (takes === undefined) throw new Error(`A drawing's path has “${letter}” where a command belongs.`);
    const numbers = tokens.slice(i, i + takes).map(Number);
    i += takes;
    const [x = 0, y = 0] = numbers.slice(-2);
    if (letter === 'Z') out.push(['Z']);
    else if (letter === 'A') out.push(...arc(at, numbers));
    else out.push([letter as 'M' | 'L', x, y]);
    if (letter !== 'Z') at = [x, y];
  }
  return out;
}

/** An outline at another size and place. */
export const moved = (outline: Outline, scale: number, dx: number, dy: number): Outline =>
  outline.map(
    ([command, ...numbers]) =>
      [command, ...numbers.map((it, i) => it * scale + (i % 2 === 0 ? dx : dy))] as unknown as Segment,
  );
