import type { Dimension } from '../scene.ts';
import { block, captioned, figureLine } from './block.ts';
import type { Board } from './board.ts';
import { type Candidate, candidates } from './figure-places.ts';
import { AXIS, LINES, TEXT } from './occupancy.ts';
import { line, pathThrough } from './path.ts';
import { grown, type Px, place, type Rect, type Transform } from './px.ts';
import { extension, strokes } from './strokes.ts';

/** Ends of the line of a dimension between its own points, set off where it asks for it. */
function hereLine({ from, to, off }: Dimension, t: Transform): { a: Px; b: Px } {
  const [a, b] = [place(t, from), place(t, to)];
  if (off === undefined) return { a, b };
  const set = (p: Px): Px => ({ x: p.x + off.towards.x * off.px, y: p.y - off.towards.y * off.px });
  return { a: set(a), b: set(b) };
}

const rectOf = ({ block: it, x, y }: Candidate['pieces'][number]): Rect => ({
  x,
  y,
  width: it.width,
  height: it.height,
});

/** Whether every piece lies clear, a pixel or so off the nearest line. */
const fits = (candidate: Candidate, board: Board): boolean =>
  candidate.pieces.every((piece) => board.clearOfLines(grown(rectOf(piece), 1)));

function letterHere(board: Board, it: Dimension, a: Px, b: Px): boolean {
  const found = candidates(it, a, b, board.letterings).find((candidate) => fits(candidate, board));
  if (found === undefined) return false;
  for (const { block: lettered, x, y } of found.pieces) board.letter(it.name, lettered, x, y);
  return true;
}

const figureTexts = ({ figure: { first, second } }: Dimension): string[] =>
  second === undefined ? [first] : [first, second];

/** Furthest a figure may stand from its line, px. */
const FURTHEST = 170;

/** A dimension between its own points; where its figure finds no room at the line, a leader takes it to the nearest. */
export function drawHere(board: Board, it: Dimension, t: Transform): void {
  const { a, b } = hereLine(it, t);
  const [legA, legB] = (it.legs ?? [it.from, it.to]).map((leg) => place(t, leg));
  for (const [leg, end] of [
    [legA, a],
    [legB, b],
  ] as const) {
    if (leg !== undefined) board.rule('extension', extension(leg, end), { a: leg, b: end });
  }
  const lettered = letterHere(board, it, a, b);
  board.rule('dimension', line(a, b), { a, b });
  board.rule('stroke', strokes(a, b));
  if (lettered) return;
  const label =
    it.lead === true
      ? block([figureLine(figureTexts(it), it.state, 'lead')], board.letterings)
      : captioned(it.caption, it.figure, it.behind, it.state, 'wide', board.letterings);
  const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
  const spot = board.nearest(label, middle, FURTHEST, it.lead === true ? AXIS | LINES | TEXT : undefined);
  if (spot === null) {
    board.dropped.push(it.name);
    return;
  }
  const rect = board.letter(it.name, label, spot.x, spot.y);
  const end = {
    x: Math.min(Math.max(middle.x, rect.x), rect.x + rect.width),
    y: Math.min(Math.max(middle.y, rect.y), rect.y + rect.height),
  };
  board.rule('leader', pathThrough([middle, end], false), { a: middle, b: end });
}
