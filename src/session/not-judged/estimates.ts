import { cos } from '../../calc/angle.ts';
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

/** Where the water's force acts on a stalled blade, as a share of the chord behind its leading edge; from memory. */
export const PRESSURE_AT = 0.4;

/** Moment of the water's force about the shaft's axis at stall, N·mm; undefined when a number is missing. */
function bladeMoment(valueAt: Look): number | undefined {
  const read = numbers(valueAt, ['side_force', 'vane_rudder_chord', 'vane_rudder_balance']);
  if (read === undefined) return undefined;
  const [force = 0, chord = 0, balance = 0] = read;
  return force * Math.abs(PRESSURE_AT * chord - balance);
}

/** What the blade turns the stock with at stall. */
export function bladeTurns(valueAt: Look): string {
  const moment = bladeMoment(valueAt);
  return moment === undefined ? NONE : `${(moment / 1000).toFixed(0)} N·m`;
}

/** What that moment would pull a lower bolt with, were the bracket to hold all of it. */
export function bladePulls(valueAt: Look): string {
  const moment = bladeMoment(valueAt);
  const read = numbers(valueAt, ['lower_bolt_spacing', 'transom_slope']);
  if (moment === undefined || read === undefined) return NONE;
  const [spacing = 0, slope = 0] = read;
  return `${((moment / spacing) * cos(slope)).toFixed(0)} N`;
}

/** How much the force along the shaft, at the pins ahead of it, changes what the clamps hold. */
export function slipLoads(valueAt: Look): string {
  const read = numbers(valueAt, ['clamp_slip', 'pin_forward', 'bracket_spacing']);
  if (read === undefined) return NONE;
  const [slip = 0, forward = 0, spacing = 0] = read;
  return spacing > 0 ? `${Math.abs((slip * forward) / spacing).toFixed(0)} N` : NONE;
}

/** Modulus of stainless steel, MPa: AISC 360, table of stainless 316, from memory. */
const STAINLESS = 193_000;

/** How far tightening stretches a lower bolt over its grip, mm; undefined when a number is missing. */
function stretch(valueAt: Look): number | undefined {
  const read = numbers(valueAt, ['clamp_force', 'lower_bolt_grip', 'bolt_diameter']);
  if (read === undefined) return undefined;
  const [force = 0, grip = 0, diameter = 0] = read;
  const size = boltSize(diameter);
  return 'stressArea' in size ? (force * grip) / (STAINLESS * size.stressArea) : undefined;
}

export function boltStretches(valueAt: Look): string {
  const longer = stretch(valueAt);
  return longer === undefined ? NONE : `${longer.toFixed(2)} mm`;
}

/** The stretch as a share of the shim stack that lies under the flange. */
export function stackShrinks(valueAt: Look): string {
  const longer = stretch(valueAt);
  const stack = valueAt('shim_stack');
  if (longer === undefined || typeof stack !== 'number' || stack <= 0) return NONE;
  return `${((100 * longer) / stack).toFixed(1)} %`;
}

/**
 * How much harder a thin flange pulls a lower bolt by levering on its own edge: a strip held level at the bolts and at
 * the flange's middle, m from them, needs m/(2n) of the pull at its edge, n beyond (n at most 1.25 m, EN 1993-1-8 6.2.4).
 */
export function pryingAdds(valueAt: Look): string {
  const read = numbers(valueAt, ['lower_bolt_spacing', 'lower_hole_edge']);
  if (read === undefined) return NONE;
  const [spacing = 0, edge = 0] = read;
  const m = spacing / 2;
  const n = Math.min(edge, 1.25 * m);
  return n > 0 ? `${((100 * m) / (2 * n)).toFixed(0)} %` : NONE;
}
