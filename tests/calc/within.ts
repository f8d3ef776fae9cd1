import fc from 'fast-check';

/** A number of a range, a millionth of it at a time, so that no draw has a size that nothing measured has. */
export const within = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: 1_000_000 }).map((share) => min + ((max - min) * share) / 1_000_000);
