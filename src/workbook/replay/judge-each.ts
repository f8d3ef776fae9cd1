import { judge, roomOf, type State } from '../../calc/limits/judge.ts';
import { STATES } from '../../calc/limits/states.ts';
import type { Judged } from './judged-block.ts';
import type { LimitColumns } from './limit-columns.ts';

const NOT_APPLYING = STATES.indexOf('does not apply');
const CODE = new Map<State, number>(STATES.map((state, code) => [state, code]));

/** Judges one point of a block, whatever it holds. */
function judgeOne({ rule, value, low, high, flags, appliesWhen }: Judged, i: number) {
  const { near, graded, mustExist, lowIsOutside } = rule;
  const [number, flag] = [value.numbers[i], flags?.[i] ?? appliesWhen];
  return judge({
    value: Number.isNaN(number) && value.missing(i) ? undefined : number,
    low: low[i],
    high: high[i],
    near,
    applies: Number.isNaN(flag) ? undefined : flag === appliesWhen,
    graded,
    mustExist,
    lowIsOutside,
  });
}

/** Judges points `from` to `count` of a block one by one. */
export function judgeEach(
  judged: Judged,
  { state, room, ratio }: LimitColumns,
  at: number,
  from: number,
  count: number,
): void {
  for (let i = from; i < count; i++) {
    const verdict = judgeOne(judged, i);
    state[at + i] = CODE.get(verdict.state) as number;
    room[at + i] = verdict.room ?? Number.NaN;
    ratio[at + i] = verdict.ratio ?? Number.NaN;
  }
}

/** Judges again those of the first `count` points at which the limit does not apply or has no value, bounds or room. */
export function judgeOthers(judged: Judged, columns: LimitColumns, at: number, count: number): void {
  const { rule, value, low, high, flags, appliesWhen } = judged;
  const { state, room, ratio } = columns;
  const least = rule.mustExist ? 0 : Number.NEGATIVE_INFINITY;
  for (let i = 0; i < count; i++) {
    if (flags !== undefined && flags[i] === 1 - appliesWhen) {
      state[at + i] = NOT_APPLYING;
      room[at + i] = Number.NaN;
      ratio[at + i] = Number.NaN;
      continue;
    }
    const number = value.numbers[i] as number;
    // A yes/no limit keeps no room, and has to have one all the same.
    const distance = rule.graded ? (room[at + i] as number) : roomOf(number, low[i], high[i]);
    const isAnswered = distance - distance === 0 && number > least;
    if (isAnswered && (flags === undefined || flags[i] === appliesWhen)) continue;
    judgeEach(judged, columns, at, i, i + 1);
  }
}
