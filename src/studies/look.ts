import { STATES } from '../calc/limits/states.ts';
import type { Meter } from './meter.ts';
import type { PointEvaluator } from './points.ts';
import type { Progress } from './study.ts';

/** Points evaluated between two reports of progress. */
export const BATCH = 256;

const PAST = STATES.indexOf('outside');
const NO_ANSWER = STATES.indexOf('no answer');

/** Whether a limit in this state, by its number, fails what is asked of it. */
export const isFailing = (state: number | undefined): boolean => state === PAST || state === NO_ANSWER;

/** Whether a limit in this state fails for want of an answer. */
export const isLacking = (state: number | undefined): boolean => state === NO_ANSWER;

/** Every limit at many points, kept: its room, NaN where it has none, and 1 where it does not hold. */
export interface Looked {
  readonly count: number;
  readonly room: readonly Float64Array[];
  readonly fails: readonly Uint8Array[];
  readonly state: readonly Uint8Array[];
  /** 1 where the inputs cannot be so together; every limit fails there. */
  readonly refused: Uint8Array;
}

/** Evaluates a table of points, a batch at a time, and keeps what the limits come to. */
export function* look(
  evaluator: PointEvaluator,
  columns: readonly Float64Array[],
  count: number,
  meter: Meter,
): Generator<Progress, Looked, void> {
  const room = evaluator.limits.map(() => new Float64Array(count));
  const fails = evaluator.limits.map(() => new Uint8Array(count));
  const state = evaluator.limits.map(() => new Uint8Array(count));
  const refused = new Uint8Array(count);
  for (let from = 0; from < count; from += BATCH) {
    const to = Math.min(count, from + BATCH);
    const points = evaluator.evaluateMany(
      columns.map((it) => it.subarray(from, to)),
      to - from,
    );
    refused.set(points.refused.subarray(0, to - from), from);
    for (const [i, limit] of points.limits.entries()) {
      room[i]?.set(limit.room.subarray(0, to - from), from);
      state[i]?.set(limit.state.subarray(0, to - from), from);
      const failing = fails[i];
      if (failing === undefined) continue;
      for (let n = 0; n < to - from; n++) {
        failing[from + n] = isFailing(limit.state[n]) || points.refused[n] === 1 ? 1 : 0;
      }
    }
    yield meter.did(to - from);
  }
  return { count, room, fails, state, refused };
}

/** A table in which every input stands at its present value. */
export const presentTable = (values: readonly number[], count: number): Float64Array[] =>
  values.map((it) => new Float64Array(count).fill(it));
