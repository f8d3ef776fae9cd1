import { NoAnswer } from '../answer.ts';
import { loadCases } from '../loads/cases.ts';
import type { Argument } from '../record.ts';
import type { Vector } from '../vector.ts';

/** Positions of the four pins of a two-strut bracket, mm. */
export type PairPins = readonly [
  pinX: number,
  portPinY: number,
  starboardPinY: number,
  pinZ: number,
  portFootX: number,
  portFootY: number,
  portFootZ: number,
  starboardFootX: number,
  starboardFootY: number,
  starboardFootZ: number,
];

export const pairPinArguments: readonly Argument[] = [
  { name: 'pin_x', unit: 'mm', meaning: "The clamp pins' x" },
  { name: 'port_pin_y', unit: 'mm', meaning: "The port clamp pin's y" },
  { name: 'starboard_pin_y', unit: 'mm', meaning: "The starboard clamp pin's y" },
  { name: 'pin_z', unit: 'mm', meaning: "The clamp pins' height" },
  { name: 'port_foot_x', unit: 'mm', meaning: "The port foot pin's x" },
  { name: 'port_foot_y', unit: 'mm', meaning: "The port foot pin's y" },
  { name: 'port_foot_z', unit: 'mm', meaning: "The port foot pin's height" },
  { name: 'starboard_foot_x', unit: 'mm', meaning: "The starboard foot pin's x" },
  { name: 'starboard_foot_y', unit: 'mm', meaning: "The starboard foot pin's y" },
  { name: 'starboard_foot_z', unit: 'mm', meaning: "The starboard foot pin's height" },
];

export interface Strut {
  /** Pin to pin, mm. */
  readonly length: number;
  /** From foot to clamp, length 1. */
  readonly along: Vector;
}

export interface StrutPair {
  readonly port: Strut;
  readonly starboard: Strut;
  /** How far the two are from running parallel seen from above: the product of their level parts across each other. */
  readonly turn: number;
}

function strut(footX: number, footY: number, footZ: number, x: number, y: number, z: number): Strut {
  const size = Math.sqrt((x - footX) ** 2 + (y - footY) ** 2 + (z - footZ) ** 2);
  const over = 1 / (size || 1);
  return {
    length: size,
    along: { x: (x - footX) * over, y: (y - footY) * over, z: (z - footZ) * over },
  };
}

/** Level part of a strut's direction below which it is treated as carrying nothing sideways. */
const SINGULAR = 1e-9;

/**
 * Two struts from their feet to the clamp, by their pins, which stand in `given` from `at` on. No answer when they run
 * parallel seen from above.
 */
export function strutPair(given: readonly number[], at = 0): StrutPair | NoAnswer {
  const pin = (n: number): number => given[at + n] as number;
  const [pinX, pinZ] = [pin(0), pin(3)];
  const port = strut(pin(4), pin(5), pin(6), pinX, pin(1), pinZ);
  const starboard = strut(pin(7), pin(8), pin(9), pinX, pin(2), pinZ);
  const a = port.along;
  const b = starboard.along;
  const turn = a.x * b.y - a.y * b.x;
  if (Math.abs(turn) <= SINGULAR * Math.sqrt((a.x * a.x + a.y * a.y) * (b.x * b.x + b.y * b.y))) {
    return new NoAnswer(
      'The two struts run parallel seen from above, so they cannot hold the clamp sideways.',
    );
  }
  return { port, starboard, turn };
}

/** Axial force of the port strut, N, tension positive, when both balance a level force on the clamp. */
export const portForce = ({ starboard: { along }, turn }: StrutPair, aft: number, sideways: number): number =>
  (aft * along.y - sideways * along.x) / turn;

/** Axial force of the starboard strut, as `portForce`. */
export const starboardForce = ({ port: { along }, turn }: StrutPair, aft: number, sideways: number): number =>
  (along.x * sideways - along.y * aft) / turn;

/** The most, in size, that both load cases bring in any of their signs, N. */
export interface WorstForces {
  /** Along each strut, which is both pulled and pushed by it as the sides change. */
  readonly port: number;
  readonly starboard: number;
  /** Up or down, left on the clamp. */
  readonly lift: number;
}

/** Axial forces of two struts whose level parts balance the upper clamp's reaction, at their worst. */
export function worstForces(
  pair: StrutPair,
  reaction: number,
  dragRatio: number,
  swing: number,
): WorstForces {
  let port = 0;
  let starboard = 0;
  let lift = 0;
  for (const it of loadCases(dragRatio, swing)) {
    // Turning both signs over turns all forces over, so one sign of the sideways part is enough.
    for (let sign = 1; sign >= -1; sign -= 2) {
      const aft = reaction * it.foreAft * sign;
      const sideways = reaction * it.sideways;
      const inPort = portForce(pair, aft, sideways);
      const inStarboard = starboardForce(pair, aft, sideways);
      port = Math.max(port, Math.abs(inPort));
      starboard = Math.max(starboard, Math.abs(inStarboard));
      lift = Math.max(lift, Math.abs(inPort * pair.port.along.z + inStarboard * pair.starboard.along.z));
    }
  }
  return { port, starboard, lift };
}
