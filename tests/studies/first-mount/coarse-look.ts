import type { InputName, LimitName } from '../../../src/plan/names.ts';
import { type Plan, readingOf } from '../../../src/plan/plan.ts';
import { isFailing } from '../../../src/studies/look.ts';
import type { Evaluators, PointEvaluator, PointRange } from '../../../src/studies/points.ts';
import { finish } from '../../../src/studies/study.ts';

/*
 * A look over every shim count and both bracket heights on a 10 mm grid that knows nothing of the rule under test: the
 * shaft's foot is tried at heights between its bounds, the struts' feet at places across the face.
 */

const GRID = 10;

const MOVED = [
  'lower_bracket_height',
  'upper_bracket_height',
  'shim_count',
  'shaft_foot_height',
  'strut_count',
  'starboard_foot_y',
  'port_foot_y',
  'starboard_foot_height',
  'port_foot_height',
  'single_foot_height',
  'single_foot_y',
  'shaft_offset',
  'shaft_lean',
] as const satisfies readonly InputName[];

/** Limits that struts cannot help: a mount that fails one of them needs no further look. */
const NEVER_HELPED = [
  'rudder_gap',
  'rudder_gap_swung',
  'rudder_gap_vertical',
  'shaft_gap',
  'shaft_face_gap',
  'drive_face_gap',
  'bearing_gap',
  'bracket_spacing',
  'drive_headroom',
  'rudder_immersion',
  'lower_bracket_edge',
  'shim_stack',
  'stock_utilisation',
  'tube_utilisation',
] as const satisfies readonly LimitName[];

type Mount = readonly number[];

const along = (low: number, high: number, step: number): number[] =>
  Array.from({ length: Math.max(0, Math.floor((high - low) / step) + 1) }, (_, n) => low + n * step);

/** The mounts at which every limit of the evaluator holds. */
function holding(evaluator: PointEvaluator, mounts: readonly Mount[]): Mount[] {
  const found: Mount[] = [];
  for (let from = 0; from < mounts.length; from += 512) {
    const some = mounts.slice(from, from + 512);
    const columns = MOVED.map((_, k) => Float64Array.from(some, (it) => it[k] as number));
    const { limits, refused } = evaluator.evaluateMany(columns, some.length);
    some.forEach((it, n) => {
      if (refused[n] === 0 && limits.every(({ state }) => !isFailing(state[n]))) found.push(it);
    });
  }
  return found;
}

/** A mount that keeps every limit, as values by name; undefined when the look finds none. */
export function coarseLook(plan: Plan, evaluators: Evaluators): ReadonlyMap<InputName, number> | undefined {
  const of = (name: InputName): number => Number(readingOf(plan, name)?.value);
  const [top, bottom, half] = [of('transom_top'), of('transom_bottom'), of('transom_half_breadth')];
  const [clamp, gapMin, gapMax] = [of('lower_clamp_depth') / 2, of('bearing_gap_min'), of('bearing_gap_max')];
  const afloat = of('vane_rudder_drop') + of('vane_rudder_span') * (1 - of('immersion_min')) - 1;
  const first = Math.ceil(bottom / GRID) * GRID;
  // One more than the stack may hold.
  const shimsMost = Math.floor(of('shim_stack_max') / of('shim_thickness')) + 1;
  const range = (name: InputName): PointRange => {
    if (name === 'shim_count') return { name, low: 0, high: shimsMost, whole: true };
    if (name === 'strut_count') return { name, low: 1, high: 2, whole: true };
    return { name, low: -1500, high: 4000 };
  };
  const ranges = MOVED.map(range);
  const asked = { inputs: MOVED, results: [] };
  const frames = finish(evaluators.points(null, { ...asked, limits: NEVER_HELPED }, ranges));
  const feet = [0, 0.5, 1];
  const standing: Mount[] = [];
  for (const lower of along(first, top, GRID)) {
    const lowest = lower - clamp - gapMax;
    const highest = Math.min(afloat, lower - clamp - gapMin);
    if (highest < lowest) continue;
    const over: Mount[] = along(lower + GRID, highest + of('shaft_length'), GRID).flatMap((upper) =>
      along(0, shimsMost, 1).flatMap((shims) =>
        feet.map((share) => [
          ...[lower, upper, shims, lowest + share * (highest - lowest)],
          ...[2, 200, -200, upper, upper, upper, 0, 0, 0],
        ]),
      ),
    );
    standing.push(...holding(frames, over));
  }
  const whole = finish(evaluators.points(null, asked, ranges));
  const [lowestFoot, highestFoot] = [bottom + of('foot_height') / 2, top - of('foot_height') / 2];
  const aside = [0.15, 0.25, 0.35, 0.5, 0.75].map((it) => it * (half - of('foot_width') / 2));
  for (let from = 0; from < standing.length; from += 64) {
    const strutted = standing.slice(from, from + 64).flatMap(([lower, upper, shims, foot]) =>
      [0, 40].flatMap((drop) => {
        const z = Math.min(highestFoot, Math.max(lowestFoot, (upper as number) - drop));
        const rest = (struts: number, y: number): Mount =>
          [lower, upper, shims, foot, struts, y, -y, z, z, z, 0, 0, 0] as Mount;
        return [...aside.map((y) => rest(2, y)), rest(1, 200)];
      }),
    );
    const [found] = holding(whole, strutted);
    if (found !== undefined) return new Map(MOVED.map((name, k) => [name, found[k] as number]));
  }
  return undefined;
}
