import type { Point } from '../point.ts';
import type { Dimension, Outline, Scene } from '../scene.ts';
import { type Block, block, figureLine } from './block.ts';
import type { Board } from './board.ts';
import { drawOutline } from './draw-outline.ts';
import { LINES, SURFACE, TEXT } from './occupancy.ts';
import { line } from './path.ts';
import { cornersOf } from './pieces.ts';
import { meet, type Px, place, type Rect, round, type Transform } from './px.ts';
import { extension, strokes } from './strokes.ts';

/** A clearance drawn smaller than this is drawn again, enlarged until it is at least that large, px. */
export const TOO_SMALL = 24;
export const LARGE_ENOUGH = 48;

/** Scales a detail may have: drawn size over real size. */
const ratios: readonly (readonly [number, string])[] = [
  [1 / 20, '1:20'],
  [1 / 15, '1:15'],
  [1 / 10, '1:10'],
  [1 / 8, '1:8'],
  [1 / 6, '1:6'],
  [1 / 5, '1:5'],
  [1 / 4, '1:4'],
  [1 / 3, '1:3'],
  [1 / 2.5, '1:2.5'],
  [1 / 2, '1:2'],
  [1 / 1.5, '1:1.5'],
  [1, '1:1'],
  [1.5, '1.5:1'],
  [2, '2:1'],
  [3, '3:1'],
  [4, '4:1'],
  [5, '5:1'],
  [7.5, '7.5:1'],
  [10, '10:1'],
  [15, '15:1'],
  [20, '20:1'],
  [30, '30:1'],
  [50, '50:1'],
  [75, '75:1'],
  [100, '100:1'],
];

/** An enlarged round view, px; `scale` in px per mm. */
export interface Detail {
  readonly name: string;
  readonly ratio: string;
  readonly scale: number;
  readonly x: number;
  readonly y: number;
  readonly r: number;
  /** Drawn length of the clearance inside it, px. */
  readonly gap: number;
}

interface Planned {
  readonly dimension: Dimension;
  readonly from: Point;
  readonly to: Point;
  readonly flat: boolean;
  readonly main: Block;
  readonly rest: Block | null;
  readonly caption: Block;
  readonly scale: number;
  readonly ratio: string;
  readonly r: number;
  readonly gap: number;
}

function plan(dimension: Dimension, board: Board, pxPerMm: number, least: number): Planned | null {
  const { close, figure, state } = dimension;
  if (close === undefined) return null;
  const { from, to } = close;
  const size = Math.hypot(to.x - from.x, to.y - from.y);
  const flat = Math.abs(to.x - from.x) >= Math.abs(to.y - from.y);
  const one = (texts: readonly string[], soft: boolean): Block =>
    block(
      [soft ? figureLine(texts, null, 'tick', 'text-soft') : figureLine(texts, state, 'dimension')],
      board.letterings,
    );
  const main = one([figure.first], false);
  const rest = figure.second === undefined ? null : one([figure.second], true);
  const wide = Math.max(main.width, rest?.width ?? 0);
  const wanted = flat && dimension.off === undefined ? Math.max(LARGE_ENOUGH, wide + 4) : LARGE_ENOUGH;
  // A gap of nothing has no scale at which it shows; real size then shows that the parts touch.
  const found =
    size * pxPerMm * 100 < LARGE_ENOUGH
      ? ([1, '1:1'] as const)
      : (ratios.find(([ratio]) => size * ratio * pxPerMm >= wanted) ?? ratios.at(-1));
  if (found === undefined) return null;
  const scale = found[0] * pxPerMm;
  const gap = size * scale;
  const r = Math.max(least, gap / 2 + (flat ? 18 : 14), flat ? 0 : wide + 16);
  const lines = [
    {
      runs: [
        { text: dimension.caption, style: 'tick' as const, role: 'text-soft' as const },
        { text: found[1], style: 'tick' as const, role: 'text' as const },
      ],
    },
    ...(dimension.behind === undefined
      ? []
      : [
          {
            runs: [
              {
                text: `behind ${dimension.behind.first}`,
                style: 'tick' as const,
                role: 'text-soft' as const,
              },
            ],
          },
        ]),
  ];
  return {
    dimension,
    from,
    to,
    flat,
    main,
    rest,
    caption: block(lines, board.letterings),
    scale,
    ratio: found[1],
    r,
    gap,
  };
}

const MARGIN = 4;
/** What it costs, in px of leader, to cross a cell that is taken, or another thin line. */
const OVER_PART = 5;
const OVER_TEXT = 40;
const OVER_LINE = 400;

interface Spot extends Px {
  readonly cost: number;
}

function bestSpot(board: Board, it: Planned, source: Px): Spot | null {
  const width = Math.max(2 * it.r, it.caption.width) + 2 * MARGIN;
  const height = 2 * it.r + it.caption.height + 2 * MARGIN;
  let best: Spot | null = null;
  for (const corner of board.taken.places(width, height, LINES | SURFACE | TEXT, 2)) {
    const centre = { x: corner.x + width / 2, y: corner.y + MARGIN + it.r };
    const distance = Math.hypot(centre.x - source.x, centre.y - source.y);
    if (best !== null && distance >= best.cost) continue;
    const cost =
      distance +
      OVER_PART * board.taken.along(source, centre, LINES) +
      OVER_TEXT * board.taken.along(source, centre, TEXT) +
      OVER_LINE * board.lines.filter((segment) => meet(segment, { a: source, b: centre })).length;
    if (best === null || cost < best.cost) best = { ...centre, cost };
  }
  return best;
}

/** Whether anything of an outline can be inside a circle of the scene. */
function touches(shape: Outline, centre: Point, r: number): boolean {
  if (shape.kind === 'water') return centre.y - r < shape.level;
  const points = shape.kind === 'hatch' ? shape.points : cornersOf(shape).points;
  let [x0, y0, x1, y1] = [
    Number.POSITIVE_INFINITY,
    Number.POSITIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
  ];
  for (const p of points) {
    x0 = Math.min(x0, p.x);
    y0 = Math.min(y0, p.y);
    x1 = Math.max(x1, p.x);
    y1 = Math.max(y1, p.y);
  }
  return x0 < centre.x + r && x1 > centre.x - r && y0 < centre.y + r && y1 > centre.y - r;
}

/** The measured line with its figure, inside a detail. */
function drawMeasure(board: Board, it: Planned, t: Transform): void {
  const { dimension, main, rest, flat } = it;
  const [from, to] = [place(t, it.from), place(t, it.to)];
  const { off } = dimension;
  const shift =
    off === undefined ? { x: 0, y: 0 } : { x: off.towards.x * off.px, y: -off.towards.y * off.px };
  const a = { x: from.x + shift.x, y: from.y + shift.y };
  const b = { x: to.x + shift.x, y: to.y + shift.y };
  board.drawn.push(
    { kind: 'path', role: 'extension', d: extension(from, a) + extension(to, b) },
    { kind: 'path', role: 'dimension', d: line(a, b) },
    { kind: 'path', role: 'stroke', d: strokes(a, b) },
  );
  const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
  const put = (block: Block | null, x: number, y: number): void => {
    if (block !== null) board.letter(dimension.name, block, x, y);
  };
  if (!flat) {
    const tall = main.height + (rest?.height ?? 0);
    put(main, middle.x + 8, middle.y - tall / 2);
    put(rest, middle.x + 8, middle.y - tall / 2 + main.height);
    return;
  }
  const slope = Math.abs(b.y - a.y) / Math.max(1, Math.abs(b.x - a.x));
  const below = middle.y + 4 + (slope * main.width) / 2;
  if (off !== undefined && off.towards.y < 0) {
    put(main, middle.x - main.width / 2, below);
    put(rest, middle.x - (rest?.width ?? 0) / 2, below + main.height);
    return;
  }
  put(main, middle.x - main.width / 2, middle.y - 3 - main.height - (slope * main.width) / 2);
  put(rest, middle.x - (rest?.width ?? 0) / 2, below);
}

function drawDetail(board: Board, scene: Scene, it: Planned, centre: Px, source: Px, ring: number): Detail {
  const { r, dimension, scale } = it;
  const focus = { x: (it.from.x + it.to.x) / 2, y: (it.from.y + it.to.y) / 2 };
  const t: Transform = { scale, x: centre.x - focus.x * scale, y: centre.y + focus.y * scale };
  const clip = `detail-${dimension.name}`;
  const distance = Math.hypot(centre.x - source.x, centre.y - source.y) || 1;
  const u = { x: (centre.x - source.x) / distance, y: (centre.y - source.y) / distance };
  const from = { x: source.x + u.x * ring, y: source.y + u.y * ring };
  const to = { x: centre.x - u.x * r, y: centre.y - u.y * r };
  board.rule('leader', line(from, to), { a: from, b: to });
  board.drawn.push({
    kind: 'circle',
    role: 'ring',
    cx: round(source.x),
    cy: round(source.y),
    r: round(ring),
  });
  board.clips.push({ name: clip, kind: 'circle', cx: round(centre.x), cy: round(centre.y), r: round(r) });
  board.drawn.push({ kind: 'circle', role: 'detail', cx: round(centre.x), cy: round(centre.y), r: round(r) });
  const sheet: Rect = { x: centre.x - r, y: centre.y - r, width: 2 * r, height: 2 * r };
  for (const shape of scene.shapes) {
    if (
      shape.kind === 'label' ||
      shape.kind === 'level' ||
      shape.kind === 'dimension' ||
      shape.kind === 'angle'
    )
      continue;
    if (!touches(shape, focus, r / scale)) continue;
    board.drawn.push(...drawOutline(shape, t, sheet, clip));
  }
  board.drawn.push({
    kind: 'circle',
    role: 'detail-edge',
    cx: round(centre.x),
    cy: round(centre.y),
    r: round(r),
  });
  drawMeasure(board, it, t);
  board.letter(dimension.name, it.caption, centre.x - it.caption.width / 2, centre.y + r + 2, 'centre');
  board.taken.markRect(sheet, SURFACE | LINES);
  return { name: dimension.name, ratio: it.ratio, scale, x: centre.x, y: centre.y, r, gap: it.gap };
}

/** What a detail is drawn of: a clearance too small to read, with its place and size on the main drawing, px. */
export interface Small {
  readonly dimension: Dimension;
  readonly at: Px;
  readonly size: number;
}

const urgency = ({ dimension }: Small): number =>
  dimension.state === 'past' ? 0 : dimension.state === 'near' ? 1 : 2;

/** Least radius of a detail, px, by how many there are to place. */
const radius = (count: number): number => (count > 3 ? 44 : 54);

/** Draws the enlarged views that find room, most urgent first; returns them and what had to go without. */
export function drawDetails(
  board: Board,
  scene: Scene,
  small: readonly Small[],
  pxPerMm: number,
): { details: Detail[]; left: Small[] } {
  const details: Detail[] = [];
  const left: Small[] = [];
  const order = [...small].sort((a, b) => urgency(a) - urgency(b) || a.size - b.size);
  for (const it of order) {
    const ring = Math.max(11, it.size / 2 + 6);
    let done = false;
    for (const least of [radius(order.length), 40]) {
      const planned = plan(it.dimension, board, pxPerMm, least);
      const spot = planned && bestSpot(board, planned, it.at);
      if (planned === null || spot === null) continue;
      details.push(drawDetail(board, scene, planned, spot, it.at, ring));
      done = true;
      break;
    }
    if (!done) left.push(it);
  }
  return { details, left };
}
