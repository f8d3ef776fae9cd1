import { between, point } from '../point.ts';
import type { Dimension, Scene } from '../scene.ts';
import { isDrawn } from '../shapes.ts';
import { onCircle } from './arc-path.ts';
import { Board } from './board.ts';
import { type Detail, ringRadius, type Small } from './detail-draw.ts';
import { TOO_SMALL } from './detail-plan.ts';
import { drawDetails, weightOf } from './details.ts';
import { drawAngle } from './draw-angle.ts';
import { chainLine, drawChain } from './draw-chain.ts';
import { drawHere } from './draw-here.ts';
import { drawLabel } from './draw-labels.ts';
import { drawLevelLines, drawLevels } from './draw-levels.ts';
import { drawOutline } from './draw-outline.ts';
import type { Fit, FitInput } from './fit.ts';
import { LINES, SURFACE } from './occupancy.ts';
import { occupy } from './occupy.ts';
import type { Primitive } from './primitive.ts';
import { type Px, place, type Rect, round, type Segment } from './px.ts';
import { drawRows } from './rows.ts';
import { drawRule } from './rule.ts';

/** The clearances that come out too small to read on the main drawing. */
function tooSmall(dimensions: readonly Dimension[], fit: Fit): Small[] {
  const small: Small[] = [];
  const { scale } = fit.transform;
  for (const dimension of dimensions) {
    const { close, from, to } = dimension;
    if (close === undefined) continue;
    const size = Math.hypot(to.x - from.x, to.y - from.y) * scale;
    if (size >= TOO_SMALL) continue;
    const ring = close.ring ?? between(close.from, close.to);
    small.push({ dimension, at: place(fit.transform, ring), size });
  }
  return small;
}

const clipped = (primitive: Primitive, clip: string | null): Primitive =>
  clip === null ? primitive : { ...primitive, clip };

/** A page filled one way. */
export interface Tried {
  readonly board: Board;
  readonly fit: Fit;
  readonly details: readonly Detail[];
  /** How much the clearances weigh that went without an enlarged view. */
  readonly left: number;
}

/** A ring as eight straight lines, for lettering to keep clear of. */
function ringOf(at: Px, r: number): Segment[] {
  const corner = (i: number): Px => onCircle(at, r, i * 45);
  return Array.from({ length: 8 }, (_, i) => ({ a: corner(i), b: corner(i + 1) }));
}

/** Fills a page: outlines, rule, columns and rows, dimensions, details, names, in that order of precedence. */
export function fill(scene: Scene, input: FitInput, fit: Fit, pxPerMm: number): Tried {
  const { page, letterings, ruleWidth } = input;
  const { transform: t, columns } = fit;
  const board = new Board(page.width, page.height, letterings, ruleWidth);
  const outlines = scene.shapes.filter(isDrawn);
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
  if (clip !== null && view.width < page.width - 1) {
    const { x, y, width, height } = view;
    board.drawn.push({
      kind: 'rect',
      role: 'window',
      x: round(x),
      y: round(y),
      width: round(width),
      height: round(height),
    });
  }
  occupy(board, outlines, t);
  if (clip !== null) board.taken.markOutline(view, LINES);
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
  for (const { at, size } of small) board.edges.push(...ringOf(at, ringRadius(size)));
  for (const item of columns.chain) {
    // Labels and details must keep clear of these lines even before they are drawn.
    board.lines.push(chainLine(item, t));
  }
  drawChain(board, columns.chain, t, t.x + box.x0 * t.scale + columns.labelAt);
  drawRows(board, scene, 'above', t, ruleWidth);
  drawRows(board, scene, 'below', t, ruleWidth);
  const levels = drawLevels(board, columns.levels, t, ruleWidth);
  for (const angle of scene.shapes) if (angle.kind === 'angle') drawAngle(board, angle, t);
  const here = dimensions.filter((it) => it.place === 'here');
  for (const dimension of here) if (!shrunk.has(dimension)) drawHere(board, dimension, t);
  drawLevelLines(board, levels);
  for (const it of scene.shapes) if (it.kind === 'label' && it.role !== 'name') drawLabel(board, it, t);
  const { details, left } = drawDetails(board, scene, small, pxPerMm);
  for (const { dimension } of left) if (dimension.place === 'here') drawHere(board, dimension, t);
  for (const it of scene.shapes) if (it.kind === 'label' && it.role === 'name') drawLabel(board, it, t);
  return { board, fit, details, left: left.reduce((sum, it) => sum + weightOf(it), 0) };
}
