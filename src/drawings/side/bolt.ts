import { moved, type Point } from '../point.ts';
import type { Outline } from '../scene.ts';
import { polygon, slab } from '../shapes.ts';

/** A through bolt seen from the side, from its head outside to the nut on the backing plate. */
export interface ThroughBolt {
  /** Where it enters the hull, and the directions up the face and out of it. */
  readonly at: Point;
  readonly up: Point;
  readonly out: Point;
  readonly diameter: number;
  /** What is clamped outside the hull, and the hull, mm. */
  readonly outside: number;
  readonly thickness: number;
  readonly bed: number;
  readonly plate: number;
  /** Half the backing plate's height, mm. */
  readonly plateHalf: number;
  readonly part: string;
}

/** Backing plate on its bed, nut, shank and head. Head and nut are drawn at the usual sizes of a hexagon bolt. */
export function throughBolt(bolt: ThroughBolt): Outline[] {
  const { at, up, out, diameter: d, outside, thickness, bed, plate, plateHalf, part } = bolt;
  const piece = (from: number, to: number, half: number): Outline =>
    polygon('fastener', slab(moved(at, out, (from + to) / 2), out, Math.abs(to - from) / 2, up, half), part);
  const inside = -thickness - bed - plate;
  return [
    piece(inside, -thickness, plateHalf),
    piece(inside - 0.8 * d - 6, outside, d / 2),
    piece(inside - 0.8 * d, inside, 0.9 * d),
    piece(outside, outside + 0.65 * d, 0.9 * d),
  ];
}
