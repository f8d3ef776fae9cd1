import { cos, sin, tan } from '../../calc/angle.ts';
import type { CellName } from '../../plan/names.ts';
import { sidesInUse } from '../feet.ts';
import { resultDimension } from '../measured.ts';
import type { SceneOptions } from '../options.ts';
import { point } from '../point.ts';
import type { Dimension, Outline } from '../scene.ts';
import { polyline } from '../shapes.ts';
import { need, number, type Values } from '../values.ts';

/** A heel past this lays the boat on her side; the line would run off the sheet. */
const STEEPEST = 60;

interface Heeled {
  readonly heel: number;
  /** +1 when starboard goes down, −1 when port does: the side of the lower hole. */
  readonly side: 1 | -1;
  readonly hole: { readonly y: number; readonly z: number };
}

/** The outermost and lowest hole that a flange may have. */
function lowestOf(
  values: Values,
  y: CellName,
  z: CellName,
  spacing: CellName,
  drop: number,
): Heeled['hole'] | null {
  const got = need(values, y, z, spacing);
  if (got === null) return null;
  const side = got[0] < 0 ? -1 : 1;
  return { y: got[0] + (side * got[2]) / 2, z: got[1] - drop };
}

function heeledOf(values: Values): Heeled | null {
  const heel = number(values, 'heel_angle');
  if (heel === null || Math.abs(heel) > STEEPEST) return null;
  const drop = number(values, 'foot_rows_drop') ?? 0;
  const holes = [
    lowestOf(values, 'shaft_offset', 'lower_bracket_height', 'lower_bolt_spacing', 0),
    ...sidesInUse(values).map((side) =>
      lowestOf(values, `${side}_foot_y`, `${side}_foot_height`, 'foot_bolt_spacing', drop),
    ),
  ].filter((it) => it !== null);
  const above = (it: Heeled['hole']): number => it.z * cos(heel) - Math.abs(it.y) * sin(heel);
  const [hole] = holes.sort((a, b) => above(a) - above(b));
  return hole === undefined ? null : { heel, side: hole.y < 0 ? -1 : 1, hole };
}

/** The waterline as it lies when the boat heels towards the lower hole. */
export function heeledWaterline(values: Values): Outline[] {
  const it = heeledOf(values);
  const breadth = need(values, 'transom_half_breadth');
  if (it === null || breadth === null || it.heel === 0) return [];
  const half = Math.abs(breadth[0]) * 1.05;
  const rise = half * tan(it.heel);
  const [low, high] = [point(-it.side * half, -rise), point(it.side * half, rise)];
  return [polyline('heeled', [low, high], 'heel_angle')];
}

/** Height of the lowest hole above that waterline, square to it. */
export function lowestHoleDimension(values: Values, options: SceneOptions): Dimension[] {
  const it = heeledOf(values);
  const got = need(values, 'lowest_hole');
  if (it === null || got === null) return [];
  const from = point(it.hole.y, it.hole.z);
  const to = point(it.hole.y + got[0] * it.side * sin(it.heel), it.hole.z - got[0] * cos(it.heel));
  return resultDimension(values, options, {
    name: 'lowest_hole',
    from,
    to,
    place: 'here',
    close: { from, to },
  });
}
