import type { Scene } from '../scene.ts';
import type { Density, Letterings } from './block.ts';
import { type Columns, columns, type Lettered, letter } from './columns.ts';
import type { Piece } from './pieces.ts';
import type { Transform } from './px.ts';

export interface Page {
  readonly width: number;
  readonly height: number;
}

/** Room above and below the drawing, px. */
export interface Padding {
  readonly top: number;
  readonly bottom: number;
}

export interface Fit {
  readonly transform: Transform;
  readonly columns: Columns;
}

/** Where the drawing stands in what room is left over: shares of it at the left and at the top. */
export interface Lean {
  readonly left: number;
  readonly top: number;
}

export interface FitInput {
  readonly scene: Scene;
  readonly pieces: readonly Piece[];
  readonly page: Page;
  readonly padding: Padding;
  readonly letterings: Letterings;
  readonly ruleWidth: number;
}

const STEPS = 10;
const SMALLEST = 1e-4;

const heightOf = ({ box }: Scene): number => box.y1 - box.y0;

/** Page y of height 0. */
function zeroAt({ scene, page, padding }: FitInput, scale: number, lean: Lean): number {
  const slack = page.height - padding.top - padding.bottom - heightOf(scene) * scale;
  return padding.top + slack * lean.top + scene.box.y1 * scale;
}

/** The lettering beside the drawing, at one density. */
export const letteredAt = (input: FitInput, density: Density): Lettered =>
  letter(input.scene, input.pieces, input.ruleWidth, input.page.height, density, input.letterings);

/** Largest scale at which drawing and columns fit the page. */
function largest(input: FitInput, lettered: Lettered, lean: Lean): number {
  const { scene, page, padding } = input;
  const tallest = (page.height - padding.top - padding.bottom) / heightOf(scene);
  const fits = (scale: number): boolean => {
    const { left, right } = columns(lettered, scale, zeroAt(input, scale, lean));
    return left + right <= page.width;
  };
  let high = Math.min(tallest, page.width / (scene.box.x1 - scene.box.x0));
  if (fits(high)) return high;
  let low = SMALLEST;
  for (let i = 0; i < STEPS; i++) {
    const middle = (low + high) / 2;
    if (fits(middle)) low = middle;
    else high = middle;
  }
  return low;
}

/** A share of the scale the page would allow that is good enough to keep the fuller labels. */
const ENOUGH = 0.8;
/** How much more scale plainer labels must bring. */
const WORTH = 1.08;

/** Density whose labels cost little of the scale the page would allow, and that scale. */
export function bestScale(input: FitInput, lean: Lean): { density: Density; scale: number } {
  const { scene, page, padding } = input;
  const ideal = Math.min(
    (page.height - padding.top - padding.bottom) / heightOf(scene),
    (page.width - input.ruleWidth) / (scene.box.x1 - scene.box.x0),
  );
  let best: { density: Density; scale: number } = { density: 'wide', scale: SMALLEST };
  for (const density of ['wide', 'stacked', 'bare'] as const) {
    const scale = largest(input, letteredAt(input, density), lean);
    if (scale > best.scale * WORTH) best = { density, scale };
    if (best.scale >= ideal * ENOUGH) break;
  }
  return best;
}

/** The drawing placed on the page at a scale. */
export function fitAt(input: FitInput, lettered: Lettered, scale: number, lean: Lean): Fit {
  const y = zeroAt(input, scale, lean);
  const found = columns(lettered, scale, y);
  const slack = Math.max(0, input.page.width - found.left - found.right);
  const x = found.left + slack * lean.left - input.scene.box.x0 * scale;
  return { transform: { scale, x, y }, columns: found };
}
