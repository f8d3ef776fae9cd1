import { cos, sin } from '../../../src/calc/angle.ts';

/** A place in the boat's own axes, against gravity: heel about the boat's length, then trim about a level line athwart. */
export function againstGravity(x: number, z: number, trim: number, list: number) {
  // Written as matrices here, the other way round from the library.
  const heeled = { x, up: z * cos(list) };
  return {
    aft: heeled.x * cos(trim) + heeled.up * sin(trim),
    up: -heeled.x * sin(trim) + heeled.up * cos(trim),
  };
}

/** What a tape reads of a boat whose shape is known, with a plumb line hung so far aft of the waterline mark. */
export const readingsOf = (
  places: readonly (readonly [x: number, z: number])[],
  lineAft: number,
  zero: number,
  trim: number,
  list: number,
): number[][] =>
  places.map(([x, z]) => {
    const { aft, up } = againstGravity(x, z, trim, list);
    return [up - zero, lineAft - aft];
  });
