import { type Layout, layout } from '../../drawings/layout/layout.ts';
import type { Scene } from '../../drawings/scene.ts';
import type { Area } from './paper.ts';
import { MM_PER_PX, putPrimitives } from './primitives.ts';
import type { Sheet } from './sheet.ts';

/** Scales a drawing on paper may have, so that a rule can be laid on it. */
export const PAPER_RATIOS = [
  1,
  1 / 2,
  1 / 2.5,
  1 / 4,
  1 / 5,
  1 / 8,
  1 / 10,
  1 / 12.5,
  1 / 15,
  1 / 20,
  1 / 25,
  1 / 30,
  1 / 40,
  1 / 50,
  1 / 75,
  1 / 100,
];

/** `1:10`, from the drawn size over the real size. */
export const ratioWords = (ratio: number): string => {
  const under = 1 / ratio;
  return `1:${Math.abs(under - Math.round(under)) < 0.01 ? Math.round(under) : under.toFixed(1)}`;
};

/**
 * Draws a scene to scale in an area of the sheet, in black, text 8 points or more. The largest of `ratios` that fits is
 * taken; an empty list fills the area at any scale. Gives back the layout: `ratio` is the scale it came to.
 */
export function drawing(
  sheet: Sheet,
  scene: Scene,
  area: Area,
  ratios: readonly number[] = PAPER_RATIOS,
): Layout {
  const placed = layout(
    scene,
    { width: area.width / MM_PER_PX, height: area.height / MM_PER_PX },
    { medium: 'paper', ...(ratios.length === 0 ? {} : { ratios }) },
  );
  putPrimitives(sheet, placed.primitives, placed.clips, { x: area.x, y: area.y, scale: MM_PER_PX });
  return placed;
}
