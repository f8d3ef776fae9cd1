import { isPast, judge, PAST_WITHOUT_ROOM, ratioOf, roomOf, type State } from '../../calc/limits/judge.ts';
import { STATES } from '../../calc/limits/states.ts';
import type { Bound } from '../../plan/template.ts';
import type { LimitRule } from '../limit-rule.ts';

const INSIDE = STATES.indexOf('inside');
const NEAR = STATES.indexOf('near');
const PAST = STATES.indexOf('past');
const NOT_APPLYING = STATES.indexOf('does not apply');
const NO_ANSWER = STATES.indexOf('no answer');
const CODE = new Map<State, number>(STATES.map((state, code) => [state, code]));

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

/** A cell as the engine hands it out: NaN in `numbers` where `missing` says that there is none. */
export interface Looked {
  readonly numbers: Float64Array;
  missing(i: number): boolean;
}

/** A cell that says whether a limit applies: 1, 0, or NaN when that cannot be told. */
export type LookedFlag = Float64Array;

export interface Looks {
  number(name: string): Looked;
  flag(name: string): LookedFlag;
}

/** A bound at every point: a cell, turned over or not, or one figure for all. */
interface BoundColumn {
  readonly has: boolean;
  readonly numbers: Float64Array | undefined;
  readonly sign: 1 | -1;
  readonly figure: number;
}

function boundOf(bound: Bound | undefined, looks: Looks): BoundColumn {
  if (bound === undefined || typeof bound === 'number') {
    return { has: bound !== undefined, numbers: undefined, sign: 1, figure: bound ?? Number.NaN };
  }
  const turned = typeof bound !== 'string';
  const { numbers } = looks.number(turned ? bound.minus : bound);
  return { has: true, numbers, sign: turned ? -1 : 1, figure: Number.NaN };
}

const boundAt = ({ numbers, sign, figure }: BoundColumn, i: number): number =>
  numbers === undefined ? figure : sign * (numbers[i] as number);

/** Whether a limit applies at a point: 1, 0, or NaN when that cannot be told. */
type AppliesAt = (i: number) => number;

function appliesOf({ applies }: LimitRule, looks: Looks): AppliesAt {
  if (applies === undefined) return () => 1;
  const positive = typeof applies === 'string';
  const flags = looks.flag(positive ? applies : applies.not);
  return positive ? (i) => flags[i] as number : (i) => 1 - (flags[i] as number);
}

/** Judges a limit over the first `count` points of a block, into columns from `at` on. */
export type JudgeBlock = (count: number, columns: LimitColumns, at: number) => void;

/** A limit made ready to be judged over blocks. */
export function judgeBlock(rule: LimitRule, looks: Looks): JudgeBlock {
  const { near, graded, mustExist, lowIsPast } = rule;
  const { numbers, missing } = looks.number(rule.result);
  const lows = boundOf(rule.low, looks);
  const highs = boundOf(rule.high, looks);
  const appliesAt = appliesOf(rule, looks);
  const isPlain = graded && !mustExist;
  return (count, { state, room, ratio }, at) => {
    for (let i = 0; i < count; i++) {
      const applies = appliesAt(i);
      if (applies === 0) {
        state[at + i] = NOT_APPLYING;
        room[at + i] = Number.NaN;
        ratio[at + i] = Number.NaN;
        continue;
      }
      const number = numbers[i] as number;
      const low = lows.has ? boundAt(lows, i) : undefined;
      const high = highs.has ? boundAt(highs, i) : undefined;
      // Nearly every point of nearly every limit; `judge` would make objects for it.
      const distance = roomOf(number, low, high);
      if (isPlain && applies === 1 && distance === distance) {
        state[at + i] = isPast(distance, lowIsPast) ? PAST : distance < near ? NEAR : INSIDE;
        room[at + i] = distance;
        ratio[at + i] = ratioOf(distance, low, high);
        continue;
      }
      const verdict = judge({
        value: number !== number && missing(i) ? undefined : number,
        low,
        high,
        near,
        applies: applies === applies ? true : undefined,
        graded,
        mustExist,
        lowIsPast,
      });
      state[at + i] = CODE.get(verdict.state) ?? 0;
      room[at + i] = verdict.room ?? Number.NaN;
      ratio[at + i] = verdict.ratio ?? Number.NaN;
    }
  };
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
