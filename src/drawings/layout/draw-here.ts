import type { Dimension } from '../scene.ts';
import { type Block, block, captioned, figureLine, type Line } from './block.ts';
import type { Board } from './board.ts';
import { AXIS, LINES, TEXT } from './occupancy.ts';
import { line, pathThrough } from './path.ts';
import { grown, type Px, place, type Rect, type Transform } from './px.ts';
import { extension, strokes } from './strokes.ts';

/** Ends of the line of a dimension between its own points, set off where it asks for it. */
export function hereLine({ from, to, off }: Dimension, t: Transform): { a: Px; b: Px } {
  const [a, b] = [place(t, from), place(t, to)];
  if (off === undefined) return { a, b };
  const set = (p: Px): Px => ({ x: p.x + off.towards.x * off.px, y: p.y - off.towards.y * off.px });
  return { a: set(a), b: set(b) };
}

/** Lettering carries a little air of its own above and below. */
const CLEAR = 1;

interface Candidate {
  readonly pieces: readonly { readonly block: Block; readonly x: number; readonly y: number }[];
}

/** Figure over the line and inches under it, both on one side of it, or beside it: in that order of liking. */
function candidates(it: Dimension, a: Px, b: Px, board: Board): Candidate[] {
  const style = it.lead === true ? 'lead' : 'dimension';
  const one = (line: Line): Block => block([line], board.letterings);
  const { first, second } = it.figure;
  const main = one(figureLine([first], it.state, style));
  const rest =
    second === undefined
      ? null
      : one(figureLine([second], null, it.lead === true ? 'dimension' : 'tick', 'text-soft'));
  const row = one(figureLine(second === undefined ? [first] : [first, second], it.state, style));
  const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
  const flat = Math.abs(b.x - a.x) >= Math.abs(b.y - a.y);
  const both = rest === null ? main.height : main.height + rest.height;
  const wide = Math.max(main.width, rest?.width ?? 0);
  const stacked = (x: number, y: number): Candidate => ({
    pieces: [{ block: main, x, y }, ...(rest === null ? [] : [{ block: rest, x, y: y + main.height }])],
  });
  if (!flat) {
    const right = Math.max(a.x, b.x) + 7;
    const left = Math.min(a.x, b.x) - 7;
    const found: Candidate[] = [];
    for (const share of [0.5, 0.35, 0.65, 0.2, 0.8]) {
      const y = a.y + (b.y - a.y) * share;
      found.push(stacked(right, y - both / 2), stacked(left - wide, y - both / 2));
    }
    return found;
  }
  const centred = (it: Block, y: number): { block: Block; x: number; y: number } => ({
    block: it,
    x: middle.x - it.width / 2,
    y,
  });
  const slope = (it: Block): number =>
    (Math.abs(b.y - a.y) / Math.max(1, Math.abs(b.x - a.x))) * (it.width / 2);
  const over = (it: Block): number => middle.y - slope(it) - it.height - CLEAR;
  const under = (it: Block): number => middle.y + slope(it) + CLEAR;
  const right = Math.max(a.x, b.x) + 9;
  const left = Math.min(a.x, b.x) - 9;
  const below: Candidate = {
    pieces: [
      centred(main, under(main)),
      ...(rest === null ? [] : [centred(rest, under(main) + main.height)]),
    ],
  };
  const above: Candidate = {
    pieces: [
      centred(main, over(main) - (rest?.height ?? 0)),
      ...(rest === null ? [] : [centred(rest, over(rest))]),
    ],
  };
  const split: Candidate = {
    pieces: [centred(main, over(main)), ...(rest === null ? [] : [centred(rest, under(rest))])],
  };
  // Millimetres come first, so beside inches the bare number is read as what it is.
  const brief = second === undefined ? null : one(figureLine([first.replace(/ mm$/, '')], it.state, style));
  const tight: Candidate[] =
    brief === null || rest === null
      ? []
      : [
          { pieces: [centred(brief, over(brief)), centred(rest, under(rest))] },
          { pieces: [centred(brief, under(brief)), centred(rest, under(brief) + brief.height)] },
        ];
  // Set off downwards, the measured part is above the line: the figure goes to the other side.
  const first3 = it.off !== undefined && it.off.towards.y < 0 ? [below, split, above] : [split, above, below];
  return [
    ...first3,
    ...tight,
    { pieces: [{ block: row, x: right, y: middle.y - row.height / 2 }] },
    { pieces: [{ block: row, x: left - row.width, y: middle.y - row.height / 2 }] },
    stacked(right, middle.y - both / 2),
    stacked(left - wide, middle.y - both / 2),
  ];
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

export function letterHere(board: Board, it: Dimension, a: Px, b: Px): boolean {
  const found = candidates(it, a, b, board).find((candidate) => fits(candidate, board));
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
