/** How a result stands to its limit. */
export type State = 'inside' | 'near' | 'outside' | 'no answer' | 'does not apply';

/** What is judged, in the result's unit. */
export interface Judged {
  /** Absent when it cannot be computed. */
  readonly value: number | undefined;
  /** Absent bounds do not bind; a bound that cannot be computed is NaN. */
  readonly low?: number | undefined;
  readonly high?: number | undefined;
  /** Width of the near band. */
  readonly near: number;
  /** Whether it applies; absent when that cannot be told. */
  readonly applies: boolean | undefined;
  /** A yes/no limit has a state alone. */
  readonly graded: boolean;
  /** A value that is not above 0 is outside as well: a length that must exist. It then has no room. */
  readonly mustExist?: boolean;
  /** The low bound itself is outside. */
  readonly lowIsOutside?: boolean;
}

export interface Verdict {
  readonly state: State;
  /** Signed distance to the nearer bound. */
  readonly room: number | undefined;
  /** Room over the span, over the single bound, or over 100 mm where that bound is 0. */
  readonly ratio: number | undefined;
}

const without = (state: State): Verdict => ({ state, room: undefined, ratio: undefined });

const ZERO_BOUND = 100;

/** What room is measured against: the span, the single bound's size, or 100 where that is 0. An infinite bound is none. */
export function spanOf(low: number, high: number): number {
  if (low > Number.NEGATIVE_INFINITY && high < Number.POSITIVE_INFINITY) {
    return high > low ? high - low : ZERO_BOUND;
  }
  const bound = low > Number.NEGATIVE_INFINITY ? low : high;
  return bound === 0 || bound === Number.POSITIVE_INFINITY ? ZERO_BOUND : Math.abs(bound);
}

/** Signed distance to the nearer bound; negative outside it. */
export const roomOf = (
  value: number,
  low = Number.NEGATIVE_INFINITY,
  high = Number.POSITIVE_INFINITY,
): number => Math.min(value - low, high - value);

/** Whether a value with so much room is outside its limit. */
export const isOutside = (room: number, lowIsOutside: boolean): boolean =>
  room < 0 || (room === 0 && lowIsOutside);

/** State, room and room ratio of one limit. */
export function judge(it: Judged): Verdict {
  if (it.applies === false) return without('does not apply');
  const { value, low = Number.NEGATIVE_INFINITY, high = Number.POSITIVE_INFINITY } = it;
  if (it.applies === undefined || value === undefined || Number.isNaN(low) || Number.isNaN(high)) {
    return without('no answer');
  }
  if (it.mustExist && !(value > 0)) return without('outside');
  const room = roomOf(value, low, high);
  // Numbers so far apart that what lies between them is none.
  if (!Number.isFinite(room)) return without('no answer');
  const outside = isOutside(room, it.lowIsOutside === true);
  if (!it.graded) return without(outside ? 'outside' : 'inside');
  const state = outside ? 'outside' : room < it.near ? 'near' : 'inside';
  return { state, room, ratio: room / spanOf(low, high) };
}

export interface Named {
  readonly name: string;
  readonly verdict: Verdict;
}

export interface LeastRoom {
  readonly name: string;
  readonly value: number;
}

/** The room ratio that a limit outside without room counts as when the least room is looked for. */
export const OUTSIDE_WITHOUT_ROOM = -1;

/** What a limit counts as when the least room is looked for: its room ratio, or that of one outside without room. */
export const leastRatio = ({ ratio, state }: Verdict): number | undefined =>
  ratio ?? (state === 'outside' ? OUTSIDE_WITHOUT_ROOM : undefined);

/** The smallest room ratio over the limits that apply. */
export function leastRoom(limits: Iterable<Named>): LeastRoom | undefined {
  let least: LeastRoom | undefined;
  for (const { name, verdict } of limits) {
    const value = leastRatio(verdict);
    if (value !== undefined && (least === undefined || value < least.value)) least = { name, value };
  }
  return least;
}
