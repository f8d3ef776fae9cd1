import { commonStep, stepsToFill, stepsToFit } from './steps.ts';

/** How many of each kind. */
export type Counts = readonly number[];

/** What one tube is cut into: the kind of each piece, longest first. */
export type Filling = readonly number[];

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
  readonly wanted: Counts;
  /** The pieces given, by their place in the list, for each length. */
  readonly places: readonly (readonly number[])[];
}

export function kindsOf(pieces: readonly number[], supply: number, kerf: number): Kinds {
  const cut = stepsToFit(kerf);
  const tube = stepsToFill(supply) + cut;
  const bySize = new Map<number, number[]>();
  pieces.forEach((piece, place) => {
    // A piece as long as the tube stays so, whichever way either is rounded.
    const size = Math.min(stepsToFit(piece) + cut, tube);
    const same = bySize.get(size);
    if (same === undefined) bySize.set(size, [place]);
    else same.push(place);
  });
  const sizes = [...bySize.keys()].sort((a, b) => b - a);
  const step = commonStep([tube, ...sizes]);
  const places = sizes.map((size) => bySize.get(size) ?? []);
  return {
    tube: tube / step,
    sizes: sizes.map((size) => size / step),
    wanted: places.map((it) => it.length),
    places,
  };
}

/** The sum of a figure over the pieces of a filling. */
export const sumOver = (figures: readonly number[], filling: Filling): number => {
  let sum = 0;
  for (const kind of filling) sum += figures[kind] as number;
  return sum;
};

/** The sum of a figure over all that is wanted. */
export const sumOfAll = (figures: readonly number[], wanted: Counts): number =>
  wanted.reduce((sum, count, kind) => sum + count * (figures[kind] as number), 0);

/** Whether a filling takes no more of any kind than is wanted. */
export function isWithin(wanted: Counts, filling: Filling): boolean {
  let same = 0;
  for (let at = 0; at < filling.length; at++) {
    const kind = filling[at] as number;
    same = filling[at - 1] === kind ? same + 1 : 1;
    if (same > (wanted[kind] as number)) return false;
  }
  return true;
}

/** What is still wanted once a filling is cut. */
export function without(wanted: Counts, filling: Filling): number[] {
  const left = [...wanted];
  for (const kind of filling) left[kind] = (left[kind] as number) - 1;
  return left;
}

/** The pieces, by their place in the list, that each filling takes: longest first, and so the tubes. */
export function piecesByTube({ places }: Kinds, fillings: readonly Filling[]): number[][] {
  const next = places.map(() => 0);
  const longestFirst = [...fillings].sort((a, b) => {
    const at = a.findIndex((kind, k) => kind !== b[k]);
    return at < 0 ? b.length - a.length : (a[at] as number) - (b[at] ?? Number.POSITIVE_INFINITY);
  });
  return longestFirst.map((filling) =>
    filling.map((kind) => {
      const at = next[kind] as number;
      next[kind] = at + 1;
      return places[kind]?.[at] as number;
    }),
  );
}
