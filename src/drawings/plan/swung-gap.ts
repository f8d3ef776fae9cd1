import { resultDimension } from '../measured.ts';
import type { SceneOptions } from '../options.ts';
import type { Ground } from '../part.ts';
import { minus, moved, unit } from '../point.ts';
import type { Dimension } from '../scene.ts';
import type { Values } from '../values.ts';
import { bladesOf } from './rudder-blades.ts';

/** The closest approach of the two rudders, each anywhere within its swing, when it lies on the line of their axes. */
export function swungGap(values: Values, options: SceneOptions, ground: Ground): Dimension[] {
  const blades = bladesOf(values, ground);
  const [own, auxiliary] = [blades?.own ?? null, blades?.auxiliary ?? null];
  if (own === null || auxiliary === null || own.chord <= 0) return [];
  const along = unit(minus(auxiliary.axis, own.axis));
  const angle = (Math.abs(Math.atan2(along.y, along.x)) * 180) / Math.PI;
  if (angle > own.swing || angle > auxiliary.swing) return [];
  const from = moved(own.axis, along, own.chord);
  const to = moved(auxiliary.axis, along, -auxiliary.ahead);
  return resultDimension(values, options, {
    name: 'rudder_gap_swung',
    from,
    to,
    place: 'here',
    close: { from, to, parts: ['rudder_overhang', 'vane_rudder_span'] },
  });
}
