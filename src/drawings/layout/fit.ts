import type { Scene } from '../scene.ts';
import type { Density, Letterings } from './block.ts';
import { type Columns, columns } from './columns.ts';
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
  readonly density: Density;
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

const STEPS = 14;
const SMALLEST = 1e-4;

function at(
  input: FitInput,
  density: Density,
  scale: number,
  lean: Lean,
): { columns: Columns; zero: number } {
  const { scene, page, padding } = input;
  const slack = page.height - padding.top - padding.bottom - (scene.box.y1 - scene.box.y0) * scale;
  const zero = padding.top + slack * lean.top + scene.box.y1 * scale;
  return { columns: columns({ ...input, density, height: page.height, scale, zero }), zero };
}

/** Largest scale at which drawing and columns fit the page with labels of one density. */
function largest(input: FitInput, density: Density, lean: Lean): number {
  const { scene, page, padding } = input;
  const tallest = (page.height - padding.top - padding.bottom) / (scene.box.y1 - scene.box.y0);
  const fits = (scale: number): boolean => {
    const { left, right } = at(input, density, scale, lean).columns;
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

const ENOUGH = 0.88;

/** Density whose labels cost little of the scale the page would allow, and that scale. */
export function bestScale(input: FitInput, lean: Lean): { density: Density; scale: number } {
  const { scene, page, padding } = input;
  const ideal = Math.min(
    (page.height - padding.top - padding.bottom) / (scene.box.y1 - scene.box.y0),
    (page.width - input.ruleWidth) / (scene.box.x1 - scene.box.x0),
  );
  let best: { density: Density; scale: number } | null = null;
  for (const density of ['wide', 'stacked', 'bare'] as const) {
    const scale = largest(input, density, lean);
    if (best === null || scale > best.scale * 1.05) best = { density, scale };
    if (best.scale >= ideal * ENOUGH) break;
  }
  return best ?? { density: 'bare', scale: SMALLEST };
}

/** The drawing placed on the page at a scale. */
export function fitAt(input: FitInput, density: Density, scale: number, lean: Lean): Fit {
  const { columns: found, zero } = at(input, density, scale, lean);
  const slack = Math.max(0, input.page.width - found.left - found.right);
  const x = found.left + slack * lean.left - input.scene.box.x0 * scale;
  return { transform: { scale, x, y: zero }, columns: found, density };
}
