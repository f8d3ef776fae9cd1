import { STATES } from '../../calc/limits/states.ts';
import type { LimitColumns, Points } from '../../studies/points.ts';

/** Columns for what points give, filled again and again. */
export interface Buffers {
  readonly results: readonly Float64Array[];
  readonly limits: readonly LimitColumns[];
  readonly refused: Uint8Array;
}

const NO_ANSWER = STATES.indexOf('no answer');

export const buffersFor = (results: number, limits: number, count: number): Buffers => ({
  results: Array.from({ length: results }, () => new Float64Array(count)),
  limits: Array.from({ length: limits }, () => ({
    state: new Uint8Array(count),
    room: new Float64Array(count),
    ratio: new Float64Array(count),
  })),
  refused: new Uint8Array(count),
});

/** Takes away every answer of the points that cannot be. */
export function blank({ results, limits, refused }: Buffers, count: number): void {
  for (let i = 0; i < count; i++) {
    if (refused[i] === 0) continue;
    for (const column of results) column[i] = Number.NaN;
    for (const limit of limits) {
      limit.state[i] = NO_ANSWER;
      limit.room[i] = Number.NaN;
      limit.ratio[i] = Number.NaN;
    }
  }
}

/** The first `count` points of the buffers. */
export const pointsIn = ({ results, limits, refused }: Buffers, count: number): Points => ({
  count,
  results: results.map((it) => it.subarray(0, count)),
  limits: limits.map(({ state, room, ratio }) => ({
    state: state.subarray(0, count),
    room: room.subarray(0, count),
    ratio: ratio.subarray(0, count),
  })),
  refused: refused.subarray(0, count),
});
