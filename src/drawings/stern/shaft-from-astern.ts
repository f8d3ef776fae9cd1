import type { CellName } from '../../plan/names.ts';
import { asideAt } from '../aside.ts';
import { type Part, shaftNeeds } from '../part.ts';
import { point } from '../point.ts';
import type { Outline } from '../scene.ts';
import { breakLine, polygon, polyline } from '../shapes.ts';
import { clampWall } from '../side/clamp.ts';
import { need, type Values } from '../values.ts';

/** How far to starboard the axis stands at a height, mm. */
type Aside = (height: number) => number;

const asideOf = (values: Values): Aside | null =>
  asideAt(values, 0) === null ? null : (height) => asideAt(values, height) ?? 0;

/** Height at which the view is broken off below, mm: what hangs deeper is not the stern view's business. */
const CUT_OFF = -260;

/** A piece of the shaft about its axis, which may lean to the side. */
const piece = (
  role: Outline['role'],
  y: Aside,
  half: number,
  low: number,
  high: number,
  part: string,
): Outline =>
  polygon(
    role,
    [
      point(y(low) - half, low),
      point(y(low) + half, low),
      point(y(high) + half, high),
      point(y(high) - half, high),
    ],
    part,
  );

/** Tube, stock and the head of the auxiliary rudder, the last broken off. */
export const tubeFromAstern: Part = {
  name: 'shaft_foot_height',
  needs: [
    ...shaftNeeds,
    'shaft_offset',
    'shaft_foot_height',
    'shaft_length',
    'tube_od',
    'stock_diameter',
    'vane_rudder_drop',
  ],
  draw(values, { shaft }) {
    const got = need(
      values,
      'shaft_offset',
      'shaft_foot_height',
      'shaft_length',
      'tube_od',
      'stock_diameter',
      'vane_rudder_drop',
    );
    const y = asideOf(values);
    if (got === null || shaft === null || y === null) return [];
    const [, foot, length, od, stock, drop] = got;
    const top = foot + length * shaft.upright;
    const head = foot - drop * shaft.upright;
    const end = Math.min(CUT_OFF, head - 40);
    const half = stock * 0.6;
    return [
      piece('outline', y, half, end, head, 'vane_rudder_span'),
      breakLine(point(y(end) - half - 14, end), point(y(end) + half + 14, end), 12, 'vane_rudder_span'),
      piece('outline', y, stock / 2, head, foot, this.name),
      piece('outline', y, od / 2, foot, top, this.name),
      polyline('axis', [point(y(end - 30), end - 30), point(y(top + 45), top + 45)], this.name),
    ];
  },
};

function clampAt(
  values: Values,
  upright: number,
  height: CellName,
  depth: CellName,
  part: string,
): Outline[] {
  const got = need(values, 'shaft_offset', height, depth, 'tube_od');
  const y = asideOf(values);
  if (got === null || y === null) return [];
  const [, z, deep, od] = got;
  const half = (deep * upright) / 2;
  return [piece('choice', y, od / 2 + clampWall(od), z - half, z + half, part)];
}

const clampPart = (which: 'upper' | 'lower'): Part => ({
  name: `${which}_bracket_height`,
  needs: [...shaftNeeds, 'shaft_offset', `${which}_bracket_height`, `${which}_clamp_depth`, 'tube_od'],
  draw(values, { shaft }) {
    if (shaft === null) return [];
    return clampAt(values, shaft.upright, `${which}_bracket_height`, `${which}_clamp_depth`, this.name);
  },
});

export const clampsFromAstern: readonly Part[] = [clampPart('lower'), clampPart('upper')];
