/** What a chandler asks about a metric bolt beyond its own size, mm. */
export interface BoltShelf {
  /** Lengths usual for bolts with a shank, ISO 4014, and threaded to the head, ISO 4017. From memory. */
  readonly shank: readonly [number, number];
  readonly full: readonly [number, number];
  /** Thread of an ISO 4014 bolt: up to 125 long, up to 200, and over. */
  readonly thread: readonly [number, number, number];
  /** Greatest height of a thin nut, ISO 4035, and of a nut with a locking ring, DIN 985:1987 as published tables give it. */
  readonly thinNut: number;
  readonly lockingNut: number;
  /** Clearance hole of the fine series, ISO 273. From memory. */
  readonly hole: number;
}

const SHELVES: Readonly<Record<number, BoltShelf>> = {
  6: { shank: [30, 60], full: [12, 60], thread: [18, 24, 37], thinNut: 3.2, lockingNut: 6, hole: 6.4 },
  8: { shank: [40, 80], full: [16, 80], thread: [22, 28, 41], thinNut: 4, lockingNut: 8, hole: 8.4 },
  10: { shank: [45, 100], full: [20, 100], thread: [26, 32, 45], thinNut: 5, lockingNut: 10, hole: 10.5 },
  12: { shank: [50, 120], full: [25, 120], thread: [30, 36, 49], thinNut: 6, lockingNut: 12, hole: 13 },
};

export const boltShelf = (diameter: number): BoltShelf | undefined => SHELVES[diameter];

/** Thread on an ISO 4014 bolt of a length, mm. */
export const threadOf = (shelf: BoltShelf, length: number): number =>
  shelf.thread[length <= 125 ? 0 : length <= 200 ? 1 : 2];

/** How usual a bolt of a length is. */
export type Usual = 'shank' | 'full thread' | 'short' | 'long';

export function usualOf(shelf: BoltShelf, length: number): Usual {
  if (length > shelf.shank[1]) return 'long';
  if (length >= shelf.shank[0]) return 'shank';
  return length >= shelf.full[0] ? 'full thread' : 'short';
}
