import type { Point } from '../point.ts';
import type { Dimension, Outline, Scene } from '../scene.ts';
import { cornersOf } from '../shapes.ts';
import type { Block } from './block.ts';
import type { Board } from './board.ts';
import type { Planned } from './detail-plan.ts';
import type { Spot } from './detail-spot.ts';
import { drawOutline } from './draw-outline.ts';
import { DETAIL, SURFACE } from './occupancy.ts';
import { line } from './path.ts';
import { type Px, place, type Rect, round, type Transform } from './px.ts';
import { extension, strokes } from './strokes.ts';

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

/** What a detail is drawn of: a clearance too small to read, with its place and size on the main drawing, px. */
export interface Small {
  readonly dimension: Dimension;
  readonly at: Px;
  readonly size: number;
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

/** How much farther from a sloping line its figure has to stand, px. */
function tiltOf({ from, to, flat, main }: Planned): number {
  if (!flat) return 0;
  return (Math.abs(to.y - from.y) / Math.max(1e-9, Math.abs(to.x - from.x))) * (main.width / 2);
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
    if (block !== null) board.letterIfFree(dimension.name, block, x, y);
  };
  if (!flat) {
    const tall = main.height + (rest?.height ?? 0);
    put(main, middle.x + 8, middle.y - tall / 2);
    put(rest, middle.x + 8, middle.y - tall / 2 + main.height);
    return;
  }
  const tilt = tiltOf(it);
  const under = off !== undefined && off.towards.y < 0;
  const mainY = under ? middle.y + 2 + tilt : middle.y - 1 - main.height - tilt;
  put(main, middle.x - main.width / 2, mainY);
  put(rest, middle.x - (rest?.width ?? 0) / 2, under ? mainY + main.height : middle.y + 2 + tilt);
}

/** Radius of the ring round what a detail is drawn of, px. */
export const ringRadius = (size: number): number => Math.max(11, size / 2 + 6);

/** Draws a detail at its place, with the ring round its source and the leader between them. */
export function drawDetail(
  board: Board,
  scene: Scene,
  it: Planned,
  centre: Spot,
  { at: source, size }: Small,
): Detail {
  const ring = ringRadius(size);
  const { r, dimension, scale } = it;
  const focus = { x: (it.from.x + it.to.x) / 2, y: (it.from.y + it.to.y) / 2 };
  const { off } = dimension;
  // A line set off from its feature, with the figure beyond it, is what should be in the middle.
  const aside = off === undefined ? 0 : off.px + 10 + tiltOf(it);
  const middle = {
    x: centre.x - it.shift - (off?.towards.x ?? 0) * aside,
    y: centre.y + (off?.towards.y ?? 0) * aside,
  };
  const t: Transform = { scale, x: middle.x - focus.x * scale, y: middle.y + focus.y * scale };
  const clip = `detail-${dimension.name}`;
  const only = dimension.close?.parts;
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
    if (only !== undefined && !only.includes(shape.part ?? '')) continue;
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
  const captionY = centre.above ? centre.y - r - 2 - it.caption.height : centre.y + r + 2;
  board.letter(dimension.name, it.caption, centre.x - it.caption.width / 2, captionY, 'centre');
  drawMeasure(board, it, t);
  board.taken.markRect(sheet, SURFACE | DETAIL);
  board.discs.push(sheet);
  return { name: dimension.name, ratio: it.ratio, scale, x: centre.x, y: centre.y, r, gap: it.gap };
}
