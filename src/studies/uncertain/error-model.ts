import { normalBelow, normalQuantile } from '../../calc/uncertainty/normal.ts';
import { correlationOf } from '../../calc/uncertainty/shared-error.ts';
import { type Fit, figureAt, fitErrors, rowsByFit } from './fit-errors.ts';
import type { ReadingError } from './reading-error.ts';

/**
 * One thing that varies by itself: a reading's own error, what all readings taken with one instrument share, or one of
 * the two errors of what is fitted through a survey table.
 */
export interface Factor {
  /** The input, the instrument where it is shared, or the table. */
  readonly name: string;
  readonly shared: boolean;
  /** Places in the model's list of readings that it moves. */
  readonly moves: readonly number[];
}

/** How the errors of all readings come about from factors that do not depend on one another. */
export interface ErrorModel {
  readonly errors: readonly ReadingError[];
  /** Share of a score's variance that readings with one instrument have in common, 0 to 1. */
  readonly share: number;
  readonly factors: readonly Factor[];
  readonly fits: readonly Fit[];
  /** For each reading, its own factor and the shared one; −1 where it has none, as where a fit moves it. */
  readonly own: readonly number[];
  readonly common: readonly number[];
}

const toolOf = ({ with: tool }: ReadingError): string => tool?.trim().toLowerCase() ?? '';

export function errorModel(errors: readonly ReadingError[], share: number): ErrorModel {
  const groups = new Map<string, number[]>();
  for (const [i, error] of errors.entries()) {
    const tool = toolOf(error);
    if (error.fit !== undefined) continue;
    if (tool !== '' && share > 0) groups.set(tool, [...(groups.get(tool) ?? []), i]);
  }
  const factors: Factor[] = [];
  const common = errors.map(() => -1);
  for (const [name, moves] of groups) {
    if (moves.length < 2) continue;
    for (const i of moves) common[i] = factors.length;
    factors.push({ name, shared: true, moves });
  }
  const fits = [...rowsByFit(errors)].map(([of, rows]): Fit => {
    const first = factors.length;
    factors.push({ name: of, shared: false, moves: rows }, { name: of, shared: false, moves: rows });
    const { freedom = null } = errors[rows[0] ?? -1]?.fit ?? {};
    return { of, freedom, rows, factors: [first, first + 1] };
  });
  const own = errors.map(({ name, fit }, i) => {
    if (fit !== undefined) return -1;
    if (share === 1 && common[i] !== -1) return -1;
    factors.push({ name, shared: false, moves: [i] });
    return factors.length - 1;
  });
  return { errors, share, factors, fits, own, common };
}

/** Factors that are one thing to whoever reads: each by itself, but the two of a fit together. */
export function partsAmong({ fits }: ErrorModel, factors: readonly number[]): readonly (readonly number[])[] {
  const secondOf = new Map(fits.map((it) => it.factors));
  const firstOf = new Map(fits.map(({ factors: [first, second] }) => [second, first]));
  const left = new Set(factors.map((it) => firstOf.get(it) ?? it));
  return [...left].map((it) => {
    const second = secondOf.get(it);
    return second === undefined ? [it] : [it, second];
  });
}

/**
 * The correlation of two readings' errors. Rows of one table count as off by themselves: the variance of what is
 * fitted through them, and of all that follows from it, comes out the same.
 */
export function correlationBetween({ errors, common, share }: ErrorModel, i: number, j: number): number {
  const [a, b] = [errors[i], errors[j]];
  if (a === undefined || b === undefined || common[i] === -1 || common[i] !== common[j]) return 0;
  return correlationOf(share, a.law, b.law);
}

/** A reading's value from its error's score. */
const fromScore = ({ value, offBy, law }: ReadingError, score: number): number =>
  value + offBy * (law === 'normal' ? score : 2 * normalBelow(score) - 1);

function placed(
  model: ErrorModel,
  count: number,
  scoreOf: (factor: number) => ArrayLike<number>,
  alone: (error: ReadingError, factor: number, column: Float64Array) => void,
  into?: readonly Float64Array[],
): Float64Array[] {
  const [least, most] = [Math.sqrt(1 - model.share), Math.sqrt(model.share)];
  const ofFit = new Map(
    model.fits.map(({ of, freedom, factors: [a, b] }) => [
      of,
      fitErrors(freedom, [scoreOf(a), scoreOf(b)], count),
    ]),
  );
  return model.errors.map((error, i) => {
    const column = into?.[i] ?? new Float64Array(count);
    const { fit } = error;
    if (fit !== undefined) {
      const [first = [], second = []] = ofFit.get(fit.of) ?? [];
      for (let n = 0; n < count; n++) column[n] = figureAt(fit, first[n] ?? 0, second[n] ?? 0);
      return column;
    }
    const [own = -1, common = -1] = [model.own[i], model.common[i]];
    if (common === -1) {
      alone(error, own, column);
      return column;
    }
    const shared = scoreOf(common);
    const single = own === -1 ? undefined : scoreOf(own);
    for (let n = 0; n < count; n++) {
      column[n] = fromScore(error, most * (shared[n] ?? 0) + least * (single?.[n] ?? 0));
    }
    return column;
  });
}

/** Readings at points given by every factor's score, standard normal and independent. */
export const fromScores = (
  model: ErrorModel,
  scores: readonly ArrayLike<number>[],
  count: number,
): Float64Array[] =>
  placed(
    model,
    count,
    (factor) => scores[factor] ?? [],
    (error, factor, column) => {
      const score = scores[factor] ?? [];
      for (let n = 0; n < count; n++) column[n] = fromScore(error, score[n] ?? 0);
    },
  );

/**
 * Readings at points of the unit cube, one dimension for each factor: its chance; a factor without one moves nothing.
 * `into` is filled if given.
 */
export function fromChances(
  model: ErrorModel,
  chances: readonly (Float64Array | undefined)[],
  count: number,
  into?: readonly Float64Array[],
): Float64Array[] {
  const scores = new Map<number, Float64Array>();
  const scoreOf = (factor: number): Float64Array => {
    const known = scores.get(factor) ?? chances[factor]?.map(normalQuantile) ?? new Float64Array(count);
    scores.set(factor, known);
    return known;
  };
  const alone = ({ value, offBy, law }: ReadingError, factor: number, column: Float64Array): void => {
    const chance = chances[factor];
    if (chance === undefined) {
      column.fill(value);
      return;
    }
    const from = law === 'normal' ? scoreOf(factor) : chance;
    const [scale, shift] = law === 'normal' ? [1, 0] : [2, 1];
    for (let n = 0; n < count; n++) column[n] = value + offBy * (scale * (from[n] as number) - shift);
  };
  return placed(model, count, scoreOf, alone, into);
}
