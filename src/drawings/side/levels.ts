import { sidesInUse } from '../feet.ts';
import { lengthFigure } from '../figure.ts';
import type { SceneOptions } from '../options.ts';
import { partOf } from '../parts.ts';
import type { Level } from '../scene.ts';
import { number, type Values } from '../values.ts';
import { captionOf } from '../words.ts';

/** Heights of the choices above the waterline, as read at the rule. */
export function levels(values: Values, options: SceneOptions): Level[] {
  const feet = sidesInUse(values).map((side) => `${side}_foot_height` as const);
  const [first, second] = feet.map((name) => number(values, name));
  const alike = feet.length === 2 && first !== null && first === second;
  // Feet at one height are lettered once, under the name of the one that is looked at.
  const looked = [options.part, options.lit].map((name) => name && partOf(name));
  const shared = feet.find((name) => looked.includes(name)) ?? feet.at(-1);
  const names = [
    'upper_bracket_height',
    ...(alike && shared !== undefined ? [shared] : feet),
    'lower_bracket_height',
    'shaft_foot_height',
  ] as const;
  const found: Level[] = [];
  for (const name of names) {
    const height = number(values, name);
    if (height === null) continue;
    const other = options.ghost === undefined ? null : number(options.ghost, name);
    const lit = options.lit !== undefined && partOf(options.lit) === partOf(name);
    found.push({
      kind: 'level',
      role: 'level',
      name,
      caption: alike && name === shared ? 'Both feet' : captionOf(name),
      height,
      figure: lengthFigure(height, options.unit),
      part: partOf(name),
      ...(lit ? { lit: true as const } : {}),
      ...(other !== null && other !== height
        ? { behind: { height: other, figure: lengthFigure(other, options.unit) } }
        : {}),
    });
  }
  return found;
}
