import { type Point, point } from '../point.ts';

/** A place in boat axes seen from above: aft to the right, starboard at the bottom. */
export const seen = (x: number, y: number): Point => point(x, -y);
