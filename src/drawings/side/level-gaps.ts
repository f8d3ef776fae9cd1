import { cos } from '../../calc/angle.ts';
import type { CellName } from '../../plan/names.ts';
import { asideAt } from '../aside.ts';
import { resultDimension } from '../measured.ts';
import type { SceneOptions } from '../options.ts';
import type { Ground } from '../part.ts';
import { type Point, point } from '../point.ts';
import type { Dimension } from '../scene.ts';
import { need, type Values } from '../values.ts';

type Edge = (z: number) => Point | null;

/** Where two straight edges come closest, looked for at both ends of the heights they share; null when they share none. */
function closest(low: number, high: number, front: Edge, back: Edge): { from: Point; to: Point } | null {
  if (low > high) return null;
  let best: { from: Point; to: Point } | null = null;
  for (const z of [low, high]) {
    const from = front(z);
    const to = back(z);
    if (from === null || to === null) continue;
    if (best === null || to.x - from.x < best.to.x - best.from.x) best = { from, to };
  }
  return best;
}

/** Trailing edge of the boat's own rudder as a function of height. */
export function ownTrailingEdge(values: Values): { low: number; high: number; edge: Edge } | null {
  const got = need(values, 'rudder_overhang', 'rudder_overhang_foot', 'main_rudder_head', 'main_rudder_foot');
  if (got === null || got[2] === got[3]) return null;
  const [atHead, atFoot, high, low] = got;
  return { low, high, edge: (z) => point(atHead + ((atFoot - atHead) * (high - z)) / (high - low), z) };
}

/** Level clearances ahead of the shaft: between the rudders, transom to shaft, transom to drive unit. */
export function levelGaps(values: Values, options: SceneOptions, { face, shaft }: Ground): Dimension[] {
  if (shaft === null) return [];
  const dimensions: Dimension[] = [];
  const measure = (name: CellName, at: { from: Point; to: Point } | null): void => {
    if (at !== null)
      dimensions.push(...resultDimension(values, options, { name, ...at, place: 'here', close: at }));
  };
  const onFace: Edge = (z) => {
    const x = face?.x(z, asideAt(values, z) ?? undefined) ?? null;
    return x === null ? null : point(x, z);
  };
  const forward =
    (ahead: number): Edge =>
    (z) =>
      point(shaft.at(z).x - ahead, z);

  const hull = need(
    values,
    'transom_bottom',
    'transom_top',
    'shaft_foot_height',
    'shaft_top_height',
    'tube_od',
  );
  if (hull !== null) {
    const [bottom, top, foot, head, od] = hull;
    const low = Math.max(bottom, foot);
    measure('shaft_face_gap', closest(low, Math.min(top, head), onFace, forward(od / 2 / cos(shaft.lean))));
    const drive = need(values, 'drive_overlap', 'drive_forward');
    if (drive !== null) {
      measure('drive_face_gap', closest(head - drive[0] * shaft.upright, top, onFace, forward(drive[1])));
    }
  }

  const own = ownTrailingEdge(values);
  const blade = need(values, 'vane_rudder_head', 'vane_rudder_span', 'vane_rudder_balance');
  if (own !== null && blade !== null) {
    const [head, span, balance] = blade;
    const foot = head - span * shaft.upright;
    const low = Math.max(own.low, foot);
    const high = Math.min(own.high, head);
    measure('rudder_gap', closest(low, high, own.edge, forward(balance)));
    if (low > high) {
      const x = shaft.at((low + high) / 2).x;
      measure('rudder_gap_vertical', { from: point(x, high), to: point(x, low) });
    }
  }
  return dimensions;
}
