import type { Vector } from '../calc/vector.ts';
import { asideAt } from './aside.ts';
import type { Face } from './face.ts';
import { footPin } from './foot-pin.ts';
import type { Shaft } from './shaft.ts';
import { need, number, type Values } from './values.ts';

export type FootSide = 'port' | 'starboard' | 'single';

/** One strut with its foot, placed. */
export interface Strut {
  readonly side: FootSide;
  /** The input it lights up for. */
  readonly part: string;
  /** Centre of the foot on the transom. */
  readonly y: number;
  readonly z: number;
  readonly pin: Vector;
  readonly footPin: Vector;
  readonly od: number;
}

/** The feet in use, as far as the number of struts is known. */
export function sidesInUse(values: Values): FootSide[] {
  const count = number(values, 'strut_count');
  if (count === 1) return ['single'];
  return count === 2 ? ['starboard', 'port'] : [];
}

const across = { port: -1, starboard: 1, single: 0 } as const;

/** Everything a strut is drawn from; null while something is missing. */
export function strutOf(
  values: Values,
  face: Face | null,
  shaft: Shaft | null,
  side: FootSide,
): Strut | null {
  if (face === null || shaft === null) return null;
  const got = need(
    values,
    `${side}_foot_y`,
    `${side}_foot_height`,
    'upper_bracket_height',
    'pin_forward',
    'pin_half_width',
    'shaft_offset',
    'foot_standoff',
    side === 'single' ? 'single_strut_od' : 'strut_od',
  );
  if (got === null) return null;
  const [y, z, height, forward, half, , standoff, od] = got;
  const offset = asideAt(values, height);
  const foot = footPin(face, y, z, standoff);
  if (foot === null || offset === null) return null;
  const pin = { x: shaft.at(height).x - forward, y: offset + across[side] * half, z: height };
  return { side, part: `${side}_foot_height`, y, z, pin, footPin: foot, od };
}
