import { boltSize } from '../../calc/fasteners/iso.ts';
import { slamForce } from '../../calc/loads/slam-force.ts';
import { overhangDeflection } from '../../calc/section/overhang-deflection.ts';
import { tubeSection } from '../../calc/section/tube.ts';
import type { CellName } from '../../plan/names.ts';
import type { Value } from '../../plan/plan.ts';

type Look = (name: CellName) => Value;

/** The named numbers in order; undefined when one of them has no answer. */
function numbers(valueAt: Look, names: readonly CellName[]): number[] | undefined {
  const found = names.map(valueAt).filter((it): it is number => typeof it === 'number');
  return found.length === names.length ? found : undefined;
}

const NONE = 'no answer';

/** How far the tube's foot gives way sideways at stall, with clamps that do not. */
export function footGivesWay(valueAt: Look): string {
  const read = numbers(valueAt, [
    'bottom_bearing_force',
    'bearing_gap',
    'lower_clamp_depth',
    'bracket_spacing',
    'strut_modulus',
    'tube_od',
    'tube_wall',
  ]);
  if (read === undefined) return NONE;
  const [force = 0, gap = 0, clamp = 0, span = 0, modulus = 0, od = 0, wall = 0] = read;
  const { secondMoment } = tubeSection(od, wall);
  return `${overhangDeflection(force, gap + clamp / 2, span, modulus, secondMoment).toFixed(1)} mm`;
}

/** Speed of a breaking sea's face that the estimate takes; assumed, m/s. */
export const SEA_SPEED = 5;

/** What a sea that strikes the tube broadside pushes with on each metre of it. */
export function seaStrikes(valueAt: Look): string {
  const read = numbers(valueAt, ['water_density', 'tube_od']);
  if (read === undefined) return NONE;
  const [density = 0, od = 0] = read;
  return `${slamForce(density, od, SEA_SPEED).toFixed(0)} N`;
}

/** Pull in a lower bolt under daily steering, on its stress area: what comes and goes with every swing. */
export function boltSwings(valueAt: Look): string {
  const read = numbers(valueAt, ['bolt_tension', 'steering_force', 'side_force', 'bolt_diameter']);
  if (read === undefined) return NONE;
  const [tension = 0, steering = 0, side = 0, diameter = 0] = read;
  const size = boltSize(diameter);
  if (!('stressArea' in size) || side === 0) return NONE;
  return `${((tension * steering) / side / size.stressArea).toFixed(0)} MPa`;
}
