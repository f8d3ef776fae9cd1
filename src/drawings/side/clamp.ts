import type { Polygon } from '../scene.ts';
import type { Shaft } from '../shaft.ts';
import { polygon, slab } from '../shapes.ts';

/** Metal of a clamp beside the tube, mm: clamps are not measured, only their depth is. */
export const clampWall = (od: number): number => Math.max(12, od * 0.22);

/** A clamp round the tube, centred at height z. */
export const clamp = (shaft: Shaft, z: number, depth: number, od: number, part: string): Polygon =>
  polygon('choice', slab(shaft.at(z), shaft.up, depth / 2, shaft.aft, od / 2 + clampWall(od)), part);
