import { NoAnswer } from '../answer.ts';
import { loadCases } from '../loads/cases.ts';
import type { Argument } from '../record.ts';
import { length, minus, scaled, type Vector } from '../vector.ts';

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

export interface PairForces {
  readonly port: Strut;
  readonly starboard: Strut;
  /** Axial force of each strut, N, tension positive, one entry a case and sign. */
  readonly cases: readonly { readonly port: number; readonly starboard: number }[];
}

const strut = (foot: Vector, clamp: Vector): Strut => {
  const between = minus(clamp, foot);
  const size = length(between);
  return { length: size, along: scaled(between, 1 / (size || 1)) };
};

/** Level part of a strut's direction below which it is treated as carrying nothing sideways. */
const SINGULAR = 1e-9;

/**
 * Axial forces of two struts whose level parts balance the upper clamp's reaction, in both load cases and every sign.
 * No answer when the struts run parallel seen from above.
 */
export function pairForces(
  reaction: number,
  dragRatio: number,
  swing: number,
  [pinX, portPinY, starPinY, pinZ, portX, portY, portZ, starX, starY, starZ]: PairPins,
): PairForces | NoAnswer {
  const port = strut({ x: portX, y: portY, z: portZ }, { x: pinX, y: portPinY, z: pinZ });
  const starboard = strut({ x: starX, y: starY, z: starZ }, { x: pinX, y: starPinY, z: pinZ });
  const a = port.along;
  const b = starboard.along;
  const turn = a.x * b.y - a.y * b.x;
  if (Math.abs(turn) <= SINGULAR * Math.hypot(a.x, a.y) * Math.hypot(b.x, b.y)) {
    return new NoAnswer(
      'The two struts run parallel seen from above, so they cannot hold the clamp sideways.',
    );
  }
  const cases: { port: number; starboard: number }[] = [];
  for (const { sideways, foreAft } of loadCases(dragRatio, swing)) {
    for (const sign of [1, -1]) {
      // Turning both signs over turns both forces over, so two of the four are enough with each strut's push and pull.
      const fx = reaction * foreAft * sign;
      const fy = reaction * sideways;
      const forPort = (fx * b.y - fy * b.x) / turn;
      const forStarboard = (a.x * fy - a.y * fx) / turn;
      cases.push({ port: forPort, starboard: forStarboard }, { port: -forPort, starboard: -forStarboard });
    }
  }
  return { port, starboard, cases };
}
