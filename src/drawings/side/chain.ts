import type { CellName } from '../../plan/names.ts';
import { type Measured, resultDimension } from '../measured.ts';
import type { SceneOptions } from '../options.ts';
import { moved, type Point } from '../point.ts';
import type { Dimension } from '../scene.ts';
import type { Shaft } from '../shaft.ts';
import { number, type Values } from '../values.ts';
import { clampWall } from './clamp.ts';

/** Clearances along the shaft, one above the other: bearing to clamp, clamp to clamp, clamp to drive unit. */
export function chain(values: Values, options: SceneOptions, shaft: Shaft | null): Dimension[] {
  if (shaft === null) return [];
  const od = number(values, 'tube_od') ?? 0;
  // Measured along the clamps' after side; a gap is looked at on the tube's, where only the tube is in the way.
  const surface = od / 2 + clampWall(od);
  const aside = od / 2 + clampWall(od) * 0.5;
  const stretch = (name: CellName, from: Point, to: Point, enlarge: boolean): Dimension[] => {
    const close = { from: moved(from, shaft.aft, aside), to: moved(to, shaft.aft, aside) };
    const it: Measured = {
      name,
      from: moved(from, shaft.aft, surface),
      to: moved(to, shaft.aft, surface),
      place: 'right',
      ...(enlarge ? { close } : {}),
    };
    return resultDimension(values, options, it);
  };
  const foot = number(values, 'shaft_foot_height');
  const lower = number(values, 'lower_bracket_height');
  const upper = number(values, 'upper_bracket_height');
  const length = number(values, 'shaft_length');
  const lowerDepth = number(values, 'lower_clamp_depth');
  const upperDepth = number(values, 'upper_clamp_depth');
  const overlap = number(values, 'drive_overlap');
  const dimensions: Dimension[] = [];
  if (foot !== null && lower !== null && lowerDepth !== null) {
    const clampFoot = moved(shaft.at(lower), shaft.up, -lowerDepth / 2);
    dimensions.push(...stretch('bearing_gap', shaft.at(foot), clampFoot, true));
  }
  if (lower !== null && upper !== null) {
    dimensions.push(...stretch('bracket_spacing', shaft.at(lower), shaft.at(upper), false));
  }
  if (foot !== null && upper !== null && upperDepth !== null && length !== null && overlap !== null) {
    const clampHead = moved(shaft.at(upper), shaft.up, upperDepth / 2);
    const drive = moved(shaft.at(foot), shaft.up, length - overlap);
    dimensions.push(...stretch('drive_headroom', clampHead, drive, true));
  }
  return dimensions;
}
