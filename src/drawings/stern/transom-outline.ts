import { sidesInUse } from '../feet.ts';
import type { Part } from '../part.ts';
import { point } from '../point.ts';
import { polygon } from '../shapes.ts';
import { need, number, type Values } from '../values.ts';

/** Usable half widths and the heights at which they hold. */
interface Breadths {
  readonly top: number;
  readonly bottom: number;
  readonly low: { readonly z: number; readonly half: number };
  readonly high: { readonly z: number; readonly half: number };
}

const needs = [
  'transom_top',
  'transom_bottom',
  'transom_half_breadth',
  'transom_half_breadth_low',
  'lower_bracket_height',
] as const;

function breadthsOf(values: Values): Breadths | null {
  const got = need(values, ...needs);
  if (got === null || got[0] <= got[1]) return null;
  const [top, bottom, half, halfLow, lower] = got;
  const inside = (z: number): number => Math.min(Math.max(z, bottom), top);
  const feet = sidesInUse(values)
    .map((side) => number(values, `${side}_foot_height`))
    .filter((z) => z !== null);
  const low = inside(lower);
  const high = Math.max(low, inside(feet.length > 0 ? Math.min(...feet) : top));
  return { top, bottom, low: { z: low, half: halfLow }, high: { z: high, half } };
}

/** The usable part of the transom: its width is measured at two heights and runs straight between them. */
export const transomOutline: Part = {
  name: 'transom_rake',
  needs,
  draw(values) {
    const it = breadthsOf(values);
    if (it === null) return [];
    const { top, bottom, low, high } = it;
    const starboard = [
      point(low.half, bottom),
      point(low.half, low.z),
      point(high.half, high.z),
      point(high.half, top),
    ];
    const port = starboard.map(({ x, y }) => point(-x, y)).toReversed();
    return [polygon('outline', [...starboard, ...port], this.name)];
  },
};
