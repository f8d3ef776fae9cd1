import { normalBelow, normalQuantile } from '../../calc/uncertainty/normal.ts';
import { correlationOf } from '../../calc/uncertainty/shared-error.ts';
import type { ReadingError } from './reading-error.ts';

/** One thing that varies by itself: a reading's own error, or what all readings taken with one instrument share. */
export interface Factor {
  /** The input, or the instrument where it is shared. */
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
  /** For each reading, its own factor and the shared one; −1 where it has none. */
  readonly own: readonly number[];
  readonly common: readonly number[];
}

const toolOf = ({ with: tool }: ReadingError): string => tool?.trim().toLowerCase() ?? '';

export function errorModel(errors: readonly ReadingError[], share: number): ErrorModel {
  const groups = new Map<string, number[]>();
  for (const [i, error] of errors.entries()) {
    const tool = toolOf(error);
    if (tool !== '' && share > 0) groups.set(tool, [...(groups.get(tool) ?? []), i]);
  }
  const factors: Factor[] = [];
  const common = errors.map(() => -1);
  for (const [name, moves] of groups) {
    if (moves.length < 2) continue;
    for (const i of moves) common[i] = factors.length;
    factors.push({ name, shared: true, moves });
  }
  const own = errors.map(({ name }, i) => {
    if (share === 1 && common[i] !== -1) return -1;
    factors.push({ name, shared: false, moves: [i] });
    return factors.length - 1;
  });
  return { errors, share, factors, own, common };
}

/** The correlation of two readings' errors. */
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
  return model.errors.map((error, i) => {
    const column = into?.[i] ?? new Float64Array(count);
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
