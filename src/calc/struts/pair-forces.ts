import { NoAnswer } from '../answer.ts';
import { type LoadCase, loadCases } from '../loads/cases.ts';
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

const sizeIn = ({ sideways, foreAft }: LoadCase, aft: number, across: number): number =>
  Math.abs(foreAft * aft) + Math.abs(sideways * across);

/** The most, in size, that both load cases bring in any of their signs, N. */
export interface WorstForces {
  /** Along each strut, which is both pulled and pushed by it as the sides change. */
  readonly port: number;
  readonly starboard: number;
  /** Up or down, left on the clamp. */
  readonly lift: number;
}

/**
 * Axial forces of two struts whose level parts balance the upper clamp's reaction, at their worst. The reaction's parts
 * aft and sideways come in any signs, so the worst sum of what the two bring is the sum of their sizes.
 */
export function worstForces(
  { port: { along: a }, starboard: { along: b }, turn }: StrutPair,
  reaction: number,
  dragRatio: number,
  swing: number,
): WorstForces {
  const [stall, hardOver] = loadCases(dragRatio, swing);
  const whole = Math.abs(reaction / turn);
  const most = (aft: number, sideways: number): number =>
    whole * Math.max(sizeIn(stall, aft, sideways), sizeIn(hardOver, aft, sideways));
  return {
    port: most(b.y, b.x),
    starboard: most(a.y, a.x),
    lift: most(b.y * a.z - a.y * b.z, a.x * b.z - b.x * a.z),
  };
}
