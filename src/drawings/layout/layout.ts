import { boxOf, type Point, point } from '../point.ts';
import type { Dimension, Handle, Outline, Scene, Shape } from '../scene.ts';
import { Board, type PlacedLabel } from './board.ts';
import { type Detail, drawDetails, type Small, TOO_SMALL } from './details.ts';
import { drawAngle } from './draw-angle.ts';
import { chainLine, drawChain } from './draw-chain.ts';
import { drawHere } from './draw-here.ts';
import { drawLabel } from './draw-labels.ts';
import { drawLevels } from './draw-levels.ts';
import { drawOutline } from './draw-outline.ts';
import { bestScale, type Fit, type FitInput, fitAt, type Lean } from './fit.ts';
import { letteringFor, type Medium } from './lettering.ts';
import { LINES, SURFACE } from './occupancy.ts';
import { cornersOf, type Piece, piecesOf } from './pieces.ts';
import type { Clip, Primitive } from './primitive.ts';
import { type Px, place, type Rect, round, type Transform } from './px.ts';
import { drawRows, rowsHeight } from './rows.ts';
import { drawRule, RULE_WIDTH } from './rule.ts';

/** The page a scene is set on, px. */
export interface SheetBox {
  readonly width: number;
  readonly height: number;
}

export interface LayoutOptions {
  readonly medium?: Medium;
  /** px of the page per real mm; 96 px to the inch unless told otherwise. Details letter their scale by it. */
  readonly pxPerMm?: number;
  /** Scales allowed for the main drawing, drawn over real size; without them it fills the page. */
  readonly ratios?: readonly number[];
}

/** A scene set on a page: everything at its place in px from the top left, in the order of drawing. */
export interface Layout {
  readonly width: number;
  readonly height: number;
  readonly title: string;
  /** mm of the scene to px: x = transform.x + mm·scale, y = transform.y − mm·scale. */
  readonly transform: Transform;
  /** Drawn size over real size. */
  readonly ratio: number;
  readonly primitives: readonly Primitive[];
  readonly clips: readonly Clip[];
  readonly labels: readonly PlacedLabel[];
  readonly details: readonly Detail[];
  readonly handles: readonly (Omit<Handle, 'at'> & Px)[];
  /** Names of what found no room for its lettering. */
  readonly dropped: readonly string[];
}

const PX_PER_MM = 96 / 25.4;

const isOutline = (shape: Shape): shape is Outline =>
  shape.kind !== 'label' && shape.kind !== 'level' && shape.kind !== 'dimension' && shape.kind !== 'angle';

/** Roles too slight to keep lettering away from them. */
const slight = new Set<Outline['role']>(['water', 'hatch', 'waterline']);

const isNumberPx = (p: Px): boolean => Number.isFinite(p.x) && Number.isFinite(p.y);

function occupy(board: Board, outlines: readonly Outline[], t: Transform): void {
  for (const shape of outlines) {
    if (slight.has(shape.role)) {
      if (shape.role === 'waterline')
        board.taken.markLine({ x: 0, y: t.y }, { x: board.width, y: t.y }, LINES);
      continue;
    }
    const { points, closed } = cornersOf(shape);
    const px = points.map((p) => place(t, p));
    const count = closed ? px.length : px.length - 1;
    for (let i = 0; i < count; i++) {
      const a = px[i];
      const b = px[(i + 1) % px.length];
      if (a !== undefined && b !== undefined && isNumberPx(a) && isNumberPx(b))
        board.taken.markLine(a, b, LINES);
    }
    if (closed) board.taken.markPolygon(px, SURFACE);
  }
}

/** The clearances that come out too small to read on the main drawing. */
function tooSmall(dimensions: readonly Dimension[], fit: Fit): Small[] {
  const small: Small[] = [];
  const { scale } = fit.transform;
  for (const dimension of dimensions) {
    const { close, from, to } = dimension;
    if (close === undefined) continue;
    const size = Math.hypot(to.x - from.x, to.y - from.y) * scale;
    if (size >= TOO_SMALL) continue;
    const middle = point((close.from.x + close.to.x) / 2, (close.from.y + close.to.y) / 2);
    small.push({ dimension, at: place(fit.transform, middle), size });
  }
  return small;
}

const clipped = (primitive: Primitive, clip: string | null): Primitive =>
  clip === null ? primitive : { ...primitive, clip };

interface Tried {
  readonly board: Board;
  readonly fit: Fit;
  readonly details: readonly Detail[];
  readonly left: number;
}

function fill(scene: Scene, input: FitInput, fit: Fit, pxPerMm: number): Tried {
  const { page, letterings, ruleWidth } = input;
  const { transform: t, columns } = fit;
  const board = new Board(page.width, page.height, letterings);
  const outlines = scene.shapes.filter(isOutline);
  const dimensions = scene.shapes.filter((it): it is Dimension => it.kind === 'dimension');
  const sheet: Rect = { x: ruleWidth, y: 0, width: page.width - ruleWidth, height: page.height };
  const { box } = scene;
  const corner = place(t, point(box.x0, box.y1));
  const view: Rect = scene.cropped
    ? { x: corner.x, y: corner.y, width: (box.x1 - box.x0) * t.scale, height: (box.y1 - box.y0) * t.scale }
    : sheet;
  const clip = scene.cropped ? 'window' : null;
  if (clip !== null) {
    const bounds = {
      x: round(view.x),
      y: round(view.y),
      width: round(view.width),
      height: round(view.height),
    };
    board.clips.push({ name: clip, kind: 'rect', ...bounds });
  }
  for (const shape of outlines) {
    for (const drawn of drawOutline(shape, t, view)) board.drawn.push(clipped(drawn, clip));
  }
  occupy(board, outlines, t);
  if (scene.rule !== null) {
    const rule = drawRule(
      scene.rule,
      t.y,
      t.scale,
      { x: 0, y: 0, width: page.width, height: page.height },
      letterings,
    );
    board.drawn.push(...rule.primitives);
    board.taken.markRect({ x: 0, y: 0, width: ruleWidth, height: page.height }, LINES | SURFACE);
    for (const [i, rect] of rule.labels.entries()) board.keep(`rule ${i}`, rect);
  }
  const small = tooSmall(dimensions, fit);
  const shrunk = new Set(small.map((it) => it.dimension));
  for (const item of columns.chain) {
    // Labels and details must keep clear of these lines even before they are drawn.
    board.lines.push(...[chainLine(item, t)]);
  }
  drawChain(board, columns.chain, t, t.x + box.x0 * t.scale + columns.labelAt);
  drawRows(board, scene, 'above', t, ruleWidth);
  drawRows(board, scene, 'below', t, ruleWidth);
  drawLevels(board, columns.levels, t, ruleWidth);
  for (const angle of scene.shapes) if (angle.kind === 'angle') drawAngle(board, angle, t);
  const here = dimensions.filter((it) => it.place === 'here');
  for (const dimension of here) if (!shrunk.has(dimension)) drawHere(board, dimension, t);
  for (const { a, b } of board.lines) board.taken.markLine(a, b, LINES);
  for (const it of scene.shapes) if (it.kind === 'label' && it.role !== 'name') drawLabel(board, it, t);
  const { details, left } = drawDetails(board, scene, small, pxPerMm);
  for (const { dimension } of left) if (dimension.place === 'here') drawHere(board, dimension, t);
  for (const it of scene.shapes) if (it.kind === 'label' && it.role === 'name') drawLabel(board, it, t);
  return { board, fit, details, left: left.length };
}

const BESIDE: Lean = { left: 0.25, top: 0.5 };
const ASIDE: Lean = { left: 0, top: 0 };
/** By how much the drawing gives way, step by step, so that its details find room. */
const GIVING = [1, 0.94, 0.88, 0.82, 0.76, 0.7] as const;

const snapped = (scale: number, pxPerMm: number, ratios: readonly number[] | undefined): number => {
  if (ratios === undefined) return scale;
  const allowed = ratios.filter((ratio) => ratio * pxPerMm <= scale);
  return allowed.length === 0 ? scale : Math.max(...allowed) * pxPerMm;
};

/** A window stretched to the page's shape, so that it fills it. */
function stretched(scene: Scene, fit: Fit, input: FitInput): Scene {
  if (!scene.cropped) return scene;
  const { box } = scene;
  const { page, padding } = input;
  const { scale } = fit.transform;
  const wide = Math.max(0, page.width - fit.columns.left - fit.columns.right) / scale / 2;
  const tall =
    Math.max(0, page.height - padding.top - padding.bottom - (box.y1 - box.y0) * scale) / scale / 2;
  return { ...scene, box: { x0: box.x0 - wide, y0: box.y0 - tall, x1: box.x1 + wide, y1: box.y1 + tall } };
}

/** A box with an extent, whatever the scene held. */
function sound(scene: Scene): Scene {
  const corners: Point[] = [point(scene.box.x0, scene.box.y0), point(scene.box.x1, scene.box.y1)];
  const box = boxOf(corners.filter((p) => Number.isFinite(p.x) && Number.isFinite(p.y))) ?? {
    x0: 0,
    y0: 0,
    x1: 0,
    y1: 0,
  };
  const least = 1;
  return {
    ...scene,
    box: { ...box, x1: Math.max(box.x1, box.x0 + least), y1: Math.max(box.y1, box.y0 + least) },
  };
}

/** Sets a scene on a page of the given size. */
export function layout(given: Scene, sheet: SheetBox, options: LayoutOptions = {}): Layout {
  let scene = sound(given);
  const page = { width: Math.max(1, sheet.width), height: Math.max(1, sheet.height) };
  const pxPerMm = options.pxPerMm ?? PX_PER_MM;
  const letterings = letteringFor(options.medium ?? 'screen');
  const pieces: Piece[] = scene.cropped ? [] : piecesOf(scene.shapes.filter(isOutline));
  const ruleWidth = scene.rule === null ? 0 : RULE_WIDTH;
  const padding = {
    top: scene.cropped ? 0 : rowsHeight(scene, 'above', letterings),
    bottom: scene.cropped ? 0 : rowsHeight(scene, 'below', letterings),
  };
  const input: FitInput = { scene, pieces, page, padding, letterings, ruleWidth };
  const { density, scale } = bestScale(input, BESIDE);
  const start = snapped(scale, pxPerMm, options.ratios);
  let best: Tried | null = null;
  for (const [i, giving] of GIVING.entries()) {
    const tried =
      options.ratios === undefined ? start * giving : snapped(start * giving, pxPerMm, options.ratios);
    let fit = fitAt({ ...input, scene }, density, tried, i === 0 ? BESIDE : ASIDE);
    if (scene.cropped) {
      scene = stretched(scene, fit, { ...input, scene });
      fit = fitAt({ ...input, scene }, density, tried, BESIDE);
    }
    const filled = fill(scene, input, fit, pxPerMm);
    if (best === null || filled.left < best.left) best = filled;
    if (best.left === 0 || scene.cropped) break;
  }
  if (best === null)
    throw new Error(`The drawing "${scene.title}" could not be set on ${page.width} by ${page.height} px.`);
  const { board, fit, details } = best;
  return {
    width: page.width,
    height: page.height,
    title: scene.title,
    transform: fit.transform,
    ratio: fit.transform.scale / pxPerMm,
    primitives: board.drawn,
    clips: board.clips,
    labels: board.labels,
    details,
    handles: scene.handles.map(({ at, ...handle }) => ({ ...handle, ...place(fit.transform, at) })),
    dropped: board.dropped,
  };
}
