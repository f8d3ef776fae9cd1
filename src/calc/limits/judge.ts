/** How a result stands to its limit. */
export type State = 'inside' | 'near' | 'past' | 'no answer' | 'does not apply';

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
  /** A value that is not above 0 is past as well: a length that must exist. It then has no room. */
  readonly mustExist?: boolean;
  /** The low bound itself is past. */
  readonly lowIsPast?: boolean;
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

/** Room over what it is measured against. */
export function ratioOf(room: number, low: number | undefined, high: number | undefined): number {
  if (low !== undefined && high !== undefined) return high > low ? room / (high - low) : room / ZERO_BOUND;
  const bound = Math.abs(low ?? high ?? 0);
  return room / (bound === 0 ? ZERO_BOUND : bound);
}

/** Signed distance to the nearer bound; negative past it. */
export const roomOf = (value: number, low: number | undefined, high: number | undefined): number =>
  Math.min(
    low === undefined ? Number.POSITIVE_INFINITY : value - low,
    high === undefined ? Number.POSITIVE_INFINITY : high - value,
  );

/** Whether a value with so much room is past its limit. */
export const isPast = (room: number, lowIsPast: boolean): boolean => room < 0 || (room === 0 && lowIsPast);

/** State, room and room ratio of one limit. */
export function judge(it: Judged): Verdict {
  if (it.applies === false) return without('does not apply');
  const { value, low, high } = it;
  if (it.applies === undefined || value === undefined || Number.isNaN(low) || Number.isNaN(high)) {
    return without('no answer');
  }
  if (it.mustExist && !(value > 0)) return without('past');
  const room = roomOf(value, low, high);
  const past = isPast(room, it.lowIsPast === true);
  if (!it.graded) return without(past ? 'past' : 'inside');
  const state = past ? 'past' : room < it.near ? 'near' : 'inside';
  return { state, room, ratio: ratioOf(room, low, high) };
}

export interface Named {
  readonly name: string;
  readonly verdict: Verdict;
}

export interface LeastRoom {
  readonly name: string;
  readonly value: number;
}

/** The room ratio that a limit past without room counts as when the least room is looked for. */
export const PAST_WITHOUT_ROOM = -1;

/** What a limit counts as when the least room is looked for: its room ratio, or that of one past without room. */
export const leastRatio = ({ ratio, state }: Verdict): number | undefined =>
  ratio ?? (state === 'past' ? PAST_WITHOUT_ROOM : undefined);

/** The smallest room ratio over the limits that apply. */
export function leastRoom(limits: Iterable<Named>): LeastRoom | undefined {
  let least: LeastRoom | undefined;
  for (const { name, verdict } of limits) {
    const value = leastRatio(verdict);
    if (value !== undefined && (least === undefined || value < least.value)) least = { name, value };
  }
  return least;
}
