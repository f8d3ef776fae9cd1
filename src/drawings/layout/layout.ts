import type { Handle, Scene } from '../scene.ts';
import { isDrawn } from '../shapes.ts';
import type { PlacedLabel } from './board.ts';
import type { Detail } from './detail-draw.ts';
import { fill, type Tried } from './fill.ts';
import { bestScale, type FitInput, fitAt, type Lean, letteredAt } from './fit.ts';
import { letteringFor, type Medium } from './lettering.ts';
import { type Piece, piecesOf } from './pieces.ts';
import type { Clip, Primitive } from './primitive.ts';
import { type Px, place, type Transform } from './px.ts';
import { rowsHeight } from './rows.ts';
import { RULE_WIDTH } from './rule.ts';
import { sound, stretched } from './window.ts';

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

const BESIDE: Lean = { left: 0.25, top: 0.5 };
const ASIDE: Lean = { left: 0, top: 0 };
/** How the drawing gives way, step by step, when a detail that presses finds no room. */
const ATTEMPTS: readonly (readonly [giving: number, lean: Lean])[] = [
  [1, ASIDE],
  [0.9, ASIDE],
  [0.78, ASIDE],
];

const snapped = (scale: number, pxPerMm: number, ratios: readonly number[] | undefined): number => {
  if (ratios === undefined) return scale;
  const allowed = ratios.filter((ratio) => ratio * pxPerMm <= scale);
  return allowed.length === 0 ? scale : Math.max(...allowed) * pxPerMm;
};

/** Sets a scene on a page of the given size. */
export function layout(given: Scene, sheet: SheetBox, options: LayoutOptions = {}): Layout {
  const scene = sound(given);
  const page = { width: Math.max(1, sheet.width), height: Math.max(1, sheet.height) };
  const pxPerMm = options.pxPerMm ?? PX_PER_MM;
  const letterings = letteringFor(options.medium ?? 'screen');
  const pieces: Piece[] = scene.cropped ? [] : piecesOf(scene.shapes.filter(isDrawn));
  const padding = {
    top: rowsHeight(scene, 'above', letterings),
    bottom: rowsHeight(scene, 'below', letterings),
  };
  const ruleWidth = scene.rule === null ? 0 : RULE_WIDTH;
  const input: FitInput = { scene, pieces, page, padding, letterings, ruleWidth };
  const { density, scale } = bestScale(input, BESIDE);
  const start = snapped(scale, pxPerMm, options.ratios);
  const set = (shown: FitInput, at: number, lean: Lean): Tried =>
    fill(shown.scene, shown, fitAt(shown, letteredAt(shown, density), at, lean), pxPerMm);
  let best: Tried;
  if (scene.cropped) {
    const fit = fitAt(input, letteredAt(input, density), start, BESIDE);
    best = set({ ...input, scene: stretched(scene, fit, input) }, start, BESIDE);
  } else {
    best = set(input, start, BESIDE);
    for (const [giving, lean] of ATTEMPTS) {
      if (best.left === 0) break;
      const tried = set(input, snapped(start * giving, pxPerMm, options.ratios), lean);
      if (tried.left < best.left) best = tried;
    }
  }
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
