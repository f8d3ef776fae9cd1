import { commonStep, stepsToFill, stepsToFit } from './steps.ts';

/**
 * A cutting question in whole numbers. Each piece is counted with the kerf after it and the tube with one kerf more,
 * which is the same question exactly: the last piece needs no cut where it ends the tube.
 */
export interface Kinds {
  /** One tube. */
  readonly tube: number;
  /** The different lengths, longest first. */
  readonly sizes: readonly number[];
  /** How many of each are wanted. */
  readonly wanted: readonly number[];
  /** The pieces given, by their place in the list, for each length. */
  readonly places: readonly (readonly number[])[];
}

/** How many of each kind. */
export type Counts = readonly number[];

export function kindsOf(pieces: readonly number[], supply: number, kerf: number): Kinds {
  const cut = stepsToFit(kerf);
  const bySize = new Map<number, number[]>();
  pieces.forEach((piece, place) => {
    const size = stepsToFit(piece) + cut;
    bySize.set(size, [...(bySize.get(size) ?? []), place]);
  });
  const sizes = [...bySize.keys()].sort((a, b) => b - a);
  const tube = stepsToFill(supply) + cut;
  const step = commonStep([tube, ...sizes]);
  const places = sizes.map((size) => bySize.get(size) ?? []);
  return {
    tube: tube / step,
    sizes: sizes.map((size) => size / step),
    wanted: places.map((it) => it.length),
    places,
  };
}

export const loadOf = (sizes: readonly number[], counts: Counts): number =>
  counts.reduce((sum, count, i) => sum + count * (sizes[i] ?? 0), 0);

/** The pieces, by their place in the list, that each filling takes: longest first, and so the tubes. */
export function piecesByTube({ places }: Kinds, fillings: readonly Counts[]): number[][] {
  const next = places.map(() => 0);
  const longestFirst = [...fillings].sort((a, b) => {
    const i = a.findIndex((count, k) => count !== b[k]);
    return i < 0 ? 0 : (b[i] as number) - (a[i] as number);
  });
  return longestFirst.map((counts) =>
    counts.flatMap((count, i) => {
      const from = next[i] as number;
      next[i] = from + count;
      return (places[i] ?? []).slice(from, from + count);
    }),
  );
}
