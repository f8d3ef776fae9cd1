import { PAST_WITHOUT_ROOM } from '../../calc/limits/judge.ts';
import { STATES } from '../../calc/limits/states.ts';

const PAST = STATES.indexOf('past');
const NO_ANSWER = STATES.indexOf('no answer');

/** One limit over many points: its state by number, its room and room ratio, NaN where it has none. */
export interface LimitColumns {
  readonly state: Uint8Array;
  readonly room: Float64Array;
  readonly ratio: Float64Array;
}

/** The least room of all limits at each point: its ratio, NaN for none, and the limit's place, −1 for none. */
export interface LeastColumns {
  readonly ratio: Float64Array;
  readonly limit: Int16Array;
  /** How many limits apply and have no answer. */
  readonly unanswered: Int16Array;
}

/** The least room over limits already judged. */
export function leastOf(
  limits: readonly LimitColumns[],
  least: LeastColumns,
  from: number,
  to: number,
): void {
  least.ratio.fill(Number.NaN, from, to);
  least.limit.fill(-1, from, to);
  least.unanswered.fill(0, from, to);
  limits.forEach(({ state, ratio }, place) => {
    for (let i = from; i < to; i++) {
      const code = state[i] as number;
      const told = ratio[i] as number;
      const value = told === told ? told : code === PAST ? PAST_WITHOUT_ROOM : told;
      if (code === NO_ANSWER) least.unanswered[i] = (least.unanswered[i] as number) + 1;
      if (value !== value || value >= (least.ratio[i] as number)) continue;
      least.ratio[i] = value;
      least.limit[i] = place;
    }
  });
}
