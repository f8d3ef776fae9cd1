import type { CellName } from '../../plan/names.ts';
import { type FootSide, sidesInUse } from '../feet.ts';
import { resultDimension } from '../measured.ts';
import type { SceneOptions } from '../options.ts';
import { type Point, point } from '../point.ts';
import type { Dimension } from '../scene.ts';
import { need, number, type Values } from '../values.ts';

interface Flange {
  readonly result: CellName;
  readonly y: CellName;
  readonly z: CellName;
  readonly width: CellName;
  readonly height: CellName;
  readonly half: CellName;
}

/** The shortest way from a flange to the border of the usable transom: down, up or sideways. */
function shortest(values: Values, it: Flange): { from: Point; to: Point } | null {
  const got = need(values, it.y, it.z, it.width, it.height, it.half, 'transom_top', 'transom_bottom');
  if (got === null) return null;
  const [y, z, width, height, half, top, bottom] = got;
  const side = y < 0 ? -1 : 1;
  const [low, high] = [z - height / 2, z + height / 2];
  const edge = Math.abs(y) + width / 2;
  // Beside the shaft, which hides the flange's middle.
  const aside = it.y === 'shaft_offset' ? y - side * width * 0.36 : y;
  const ways = [
    { gap: half - edge, from: point(side * edge, z), to: point(side * half, z) },
    { gap: low - bottom, from: point(aside, low), to: point(aside, bottom) },
    { gap: top - high, from: point(aside, high), to: point(aside, top) },
  ];
  return ways.reduce((best, way) => (way.gap < best.gap ? way : best));
}

/** Feet with the same room are lettered once. */
function sidesApart(values: Values): FootSide[] {
  const sides = sidesInUse(values);
  const [a, b] = sides.map((side) => number(values, `${side}_foot_edge`));
  return sides.length === 2 && a !== null && a === b ? ['port'] : sides;
}

/** Distances of the flanges in use to the edge of the transom. */
export function edgeDimensions(values: Values, options: SceneOptions): Dimension[] {
  const sides = sidesApart(values);
  const shared = sides.length === 1 && sides[0] === 'port';
  const flanges: Flange[] = [
    {
      result: 'lower_bracket_edge',
      y: 'shaft_offset',
      z: 'lower_bracket_height',
      width: 'lower_flange_width',
      height: 'lower_flange_height',
      half: 'transom_half_breadth_low',
    },
    ...sides.map(
      (side): Flange => ({
        result: `${side}_foot_edge`,
        y: `${side}_foot_y`,
        z: `${side}_foot_height`,
        width: 'foot_width',
        height: 'foot_height',
        half: 'transom_half_breadth',
      }),
    ),
  ];
  return flanges.flatMap((it) => {
    const way = shortest(values, it);
    if (way === null) return [];
    const found = resultDimension(values, options, { name: it.result, ...way, place: 'here', close: way });
    return shared && it.result === 'port_foot_edge'
      ? found.map((dimension) => ({ ...dimension, caption: 'Both feet to edge' }))
      : found;
  });
}
