import { type Ground, type Part, shaftNeeds } from '../part.ts';
import type { Point } from '../point.ts';
import type { Outline, Role } from '../scene.ts';
import { arc, polygon, polyline, sector } from '../shapes.ts';
import { ownTrailingEdge } from '../side/level-gaps.ts';
import { need, type Values } from '../values.ts';
import { seen } from './sheet.ts';

/** Thickness of a blade against its chord as drawn: it is not measured. */
const THICK = 0.13;

/** A blade from above, nose at `from` and tail at `to` along the boat. */
function blade(role: Role, from: Point, to: Point, part: string): Outline {
  const chord = to.x - from.x;
  const half = Math.abs(chord) * THICK * 0.5;
  const shape: readonly (readonly [along: number, across: number])[] = [
    [0, 0],
    [0.02, 0.45],
    [0.1, 0.85],
    [0.3, 1],
    [0.6, 0.65],
    [1, 0],
    [0.6, -0.65],
    [0.3, -1],
    [0.1, -0.85],
    [0.02, -0.45],
  ];
  return polygon(
    role,
    shape.map(([along, across]) => ({ x: from.x + chord * along, y: from.y + half * across })),
    part,
  );
}

/** Both rudders' axes, and the height at which they come closest amidships. */
export interface Blades {
  readonly height: number;
  readonly own: { readonly axis: Point; readonly chord: number; readonly swing: number } | null;
  readonly auxiliary: {
    readonly axis: Point;
    readonly ahead: number;
    readonly astern: number;
    readonly swing: number;
  } | null;
}

export function bladesOf(values: Values, { shaft }: Ground): Blades | null {
  const own = ownTrailingEdge(values);
  const turning = need(values, 'rudder_stock_ahead', 'main_rudder_swing');
  const hung = need(
    values,
    'vane_rudder_head',
    'vane_rudder_span',
    'vane_rudder_chord',
    'vane_rudder_balance',
    'vane_rudder_swing',
    'shaft_offset',
  );
  if (hung === null || shaft === null) {
    if (own === null || turning === null) return null;
    const chord = own.edge(own.low)?.x ?? 0;
    return {
      height: own.low,
      own: { axis: seen(-turning[0], 0), chord: chord + turning[0], swing: turning[1] },
      auxiliary: null,
    };
  }
  const [head, span, chord, balance, swing, offset] = hung;
  const foot = head - span * shaft.upright;
  const gapAt = (z: number): number => shaft.at(z).x - (own?.edge(z)?.x ?? 0);
  const ends = own === null ? [foot, head] : [Math.max(own.low, foot), Math.min(own.high, head)];
  const [low, high] = [ends[0] ?? foot, ends[1] ?? head];
  const height = gapAt(low) <= gapAt(high) ? low : high;
  const auxiliary = {
    axis: seen(shaft.at(height).x, offset),
    ahead: balance,
    astern: chord - balance,
    swing,
  };
  if (own === null || turning === null) return { height, own: null, auxiliary };
  const edge = own.edge(Math.min(own.high, Math.max(own.low, height)));
  return {
    height,
    own: { axis: seen(-turning[0], 0), chord: (edge?.x ?? 0) + turning[0], swing: turning[1] },
    auxiliary,
  };
}

/** Share of its chord by which the boat's own rudder is shown ahead of its axis: its nose is not measured. */
const AHEAD = 0.14;
const CROSS = 18;

const cross = (at: Point, part: string): Outline[] => [
  polyline(
    'axis',
    [
      { x: at.x - CROSS, y: at.y },
      { x: at.x + CROSS, y: at.y },
    ],
    part,
  ),
  polyline(
    'axis',
    [
      { x: at.x, y: at.y - CROSS },
      { x: at.x, y: at.y + CROSS },
    ],
    part,
  ),
];

const swingOf = (swing: number): number => Math.min(179, Math.abs(swing));

/** The boat's own rudder amidships, with the sector its tail sweeps. */
export const ownBlade: Part = {
  name: 'rudder_overhang',
  needs: [
    'rudder_overhang',
    'rudder_overhang_foot',
    'main_rudder_head',
    'main_rudder_foot',
    'rudder_stock_ahead',
    'main_rudder_swing',
  ],
  draw(values, ground) {
    const own = bladesOf(values, ground)?.own ?? null;
    if (own === null || own.chord <= 0) return [];
    const { axis, chord } = own;
    const swing = swingOf(own.swing);
    return [
      sector('sector-soft', axis, chord, -swing, swing, this.name),
      blade(
        'soft-fill',
        { x: axis.x - chord * AHEAD, y: axis.y },
        { x: axis.x + chord, y: axis.y },
        this.name,
      ),
      {
        ...blade(
          'soft',
          { x: axis.x - chord * AHEAD, y: axis.y },
          { x: axis.x + chord, y: axis.y },
          this.name,
        ),
      },
      ...cross(axis, this.name),
    ];
  },
};

/** The auxiliary rudder amidships, with the sectors its tail and its nose sweep. */
export const auxiliaryBlade: Part = {
  name: 'vane_rudder_span',
  needs: [
    ...shaftNeeds,
    'vane_rudder_head',
    'vane_rudder_span',
    'vane_rudder_chord',
    'vane_rudder_balance',
    'vane_rudder_swing',
    'shaft_offset',
  ],
  draw(values, ground) {
    const it = bladesOf(values, ground)?.auxiliary ?? null;
    if (it === null) return [];
    const { axis, ahead, astern } = it;
    const swing = swingOf(it.swing);
    return [
      ...(astern > 0 ? [sector('sector', axis, astern, -swing, swing, this.name)] : []),
      ...(ahead > 0 ? [arc('sector', axis, ahead, 180 - swing, 180 + swing, this.name)] : []),
      blade('outline', { x: axis.x - ahead, y: axis.y }, { x: axis.x + astern, y: axis.y }, this.name),
      ...cross(axis, this.name),
    ];
  },
};
