import type { BoltOrder } from './bolts.ts';
import { quarterInches } from './words.ts';

/** A bolt as it is sold, whatever unit lengths are in: `M12 × 110`. */
export const boltSizeWords = ({ diameter, length, rod }: BoltOrder): string =>
  length === undefined ? `M${diameter} rod, ${rod} mm` : `M${diameter} × ${length}`;

/** The inch bolt to buy where metric ones are not sold. */
export const inchBoltWords = ({ inch, inchLength }: BoltOrder): string =>
  inchLength === undefined ? `${inch.name} rod` : `${inch.name} × ${quarterInches(inchLength)}`;

/** The nuts of a place: `2 locking`, or `2 + 2 thin`. */
export const nutWords = ({ lock, nuts }: BoltOrder): string =>
  lock === 'locking nut' ? `${nuts} locking` : `${nuts / 2} + ${nuts / 2} thin`;
