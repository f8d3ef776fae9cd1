import { sidesInUse } from '../feet.ts';
import { lengthFigure } from '../figure.ts';
import type { SceneOptions } from '../options.ts';
import { point } from '../point.ts';
import type { Dimension } from '../scene.ts';
import { need, number, type Values } from '../values.ts';
import { captionOf } from '../words.ts';

/** How far feet and shaft stand off the centreline, in rows above the transom. */
export function offsets(values: Values, options: SceneOptions): Dimension[] {
  const names = [
    ...sidesInUse(values).map((side) => [`${side}_foot_y`, `${side}_foot_height`] as const),
    ['shaft_offset', 'upper_bracket_height'] as const,
  ];
  const found: Dimension[] = [];
  for (const [name, height] of names) {
    const got = need(values, name, height);
    if (got === null || got[0] === 0) continue;
    const [y, z] = got;
    const other = options.ghost === undefined ? null : number(options.ghost, name);
    const figure = lengthFigure(Math.abs(y), options.unit);
    found.push({
      kind: 'dimension',
      role: 'dimension',
      name,
      caption: captionOf(name),
      from: point(0, z),
      to: point(y, z),
      place: 'above',
      figure,
      state: null,
      ...(other !== null && other !== y ? { behind: lengthFigure(Math.abs(other), options.unit) } : {}),
    });
  }
  return found;
}
