import { faceNormal } from '../foot-pin.ts';
import { faceNeeds, type Part } from '../part.ts';
import type { Point } from '../point.ts';
import { breakLine, hatch, polygon } from '../shapes.ts';
import { need, number, type Values } from '../values.ts';
import { seen } from './sheet.ts';

/** Steps in which a cambered face is drawn from side to side. */
const STEPS = 24;
/** Room beside the outermost foot before the transom is broken off, mm. */
const BESIDE = 110;

/** Half the width of transom that is shown: to its usable edge, or to a little past the outermost foot. */
function shownHalf(values: Values): number | null {
  const got = need(values, 'transom_half_breadth', 'foot_width');
  if (got === null) return null;
  const feet = (['port_foot_y', 'starboard_foot_y', 'single_foot_y'] as const).map((name) =>
    Math.abs(number(values, name) ?? 0),
  );
  return Math.min(Math.abs(got[0]), Math.max(...feet) + got[1] / 2 + BESIDE);
}

/** The transom cut level at the upper bracket, or at its own edge when the bracket is above or below it. */
export const transomSection: Part = {
  name: 'transom_rake',
  needs: [
    ...faceNeeds,
    'transom_top',
    'transom_bottom',
    'transom_thickness',
    'transom_half_breadth',
    'upper_bracket_height',
    'foot_width',
  ],
  draw(values, { face }) {
    const got = need(
      values,
      'transom_top',
      'transom_bottom',
      'transom_thickness',
      'transom_half_breadth',
      'upper_bracket_height',
    );
    const half = shownHalf(values);
    if (got === null || face === null || half === null) return [];
    const [top, bottom, thickness, breadth, upper] = got;
    const z = Math.min(top, Math.max(bottom, upper));
    const outer: Point[] = [];
    const inner: Point[] = [];
    for (let i = 0; i <= STEPS; i++) {
      const y = -half + (2 * half * i) / STEPS;
      const x = face.x(z, y);
      const normal = faceNormal(face, y, z);
      if (x === null || normal === null) continue;
      // A level cut shows the skin thicker than it is, square to the face.
      const level = Math.hypot(normal.x, normal.y);
      const depth = thickness / level;
      outer.push(seen(x, y));
      inner.push(seen(x - (normal.x / level) * depth, y - (normal.y / level) * depth));
    }
    const [a, b] = [outer[0], outer.at(-1)];
    const [c, d] = [inner[0], inner.at(-1)];
    if (a === undefined || b === undefined || c === undefined || d === undefined || outer.length < 2)
      return [];
    const skin = [...outer, ...inner.toReversed()];
    const broken = half < Math.abs(breadth);
    return [
      polygon('cut', skin, this.name),
      hatch(skin),
      ...(broken
        ? [
            breakLine({ x: c.x - 16, y: c.y }, { x: a.x + 16, y: a.y }, 10),
            breakLine({ x: d.x - 16, y: d.y }, { x: b.x + 16, y: b.y }, 10),
          ]
        : []),
    ];
  },
};
