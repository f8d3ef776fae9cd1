import type { Dimension } from '../scene.ts';
import { type Block, block, figureLine, type Letterings, type Line } from './block.ts';
import type { Px } from './px.ts';

/** Lettering carries a little air of its own above and below. */
const CLEAR = 1;

/** One way of lettering a dimension at its line: blocks with their top left corners. */
export interface Candidate {
  readonly pieces: readonly { readonly block: Block; readonly x: number; readonly y: number }[];
}

/** Figure over the line and inches under it, both on one side of it, or beside it: in that order of liking. */
export function candidates(it: Dimension, a: Px, b: Px, letterings: Letterings): Candidate[] {
  const style = it.lead === true ? 'lead' : 'dimension';
  const one = (line: Line): Block => block([line], letterings);
  const { first, second } = it.figure;
  const main = one(figureLine([first], it.state, style));
  const further: Line[] = [
    ...(second === undefined
      ? []
      : [figureLine([second], null, it.lead === true ? 'dimension' : 'tick', 'text-soft')]),
    ...(it.behind === undefined
      ? []
      : [figureLine([`behind ${it.behind.first}`], null, 'tick', 'text-soft')]),
  ];
  const rest = further.length === 0 ? null : block(further, letterings);
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
  const long = Math.hypot(b.x - a.x, b.y - a.y);
  // Lettering wider than its line keeps clear of the strokes at the ends.
  const air = (it: Block): number => (it.width + 10 > long ? CLEAR + 4 : CLEAR);
  const over = (it: Block): number => middle.y - slope(it) - it.height - air(it);
  const under = (it: Block): number => middle.y + slope(it) + air(it);
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
