import { judge, type State } from '../../calc/limits/judge.ts';
import { STATES } from '../../calc/limits/states.ts';
import type { Judged } from './judged-block.ts';
import type { LimitColumns } from './limit-columns.ts';

const CODE = new Map<State, number>(STATES.map((state, code) => [state, code]));

/** Whether a limit applies at a point; undefined when that cannot be told. */
function appliesAt({ rule, flags }: Judged, i: number): boolean | undefined {
  const flag = flags?.[i];
  if (flag === undefined) return true;
  if (Number.isNaN(flag)) return undefined;
  return (flag === 1) === (typeof rule.applies === 'string');
}

/** Judges points `from` to `count` of a block one by one, whatever they hold. */
export function judgeEach(
  judged: Judged,
  { state, room, ratio }: LimitColumns,
  at: number,
  from: number,
  count: number,
): void {
  const { rule, value, low, high } = judged;
  const { near, graded, mustExist, lowIsPast } = rule;
  for (let i = from; i < count; i++) {
    const verdict = judge({
      value: Number.isNaN(value.numbers[i]) && value.missing(i) ? undefined : value.numbers[i],
      low: low[i],
      high: high[i],
      near,
      applies: appliesAt(judged, i),
      graded,
      mustExist,
      lowIsPast,
    });
    state[at + i] = CODE.get(verdict.state) as number;
    room[at + i] = verdict.room ?? Number.NaN;
    ratio[at + i] = verdict.ratio ?? Number.NaN;
  }
}
