import { STATES } from '../../calc/limits/states.ts';
import type { LimitRule } from '../limit-rule.ts';
import { boundColumn, type Looked, spanColumn } from './block-column.ts';
import { judgeEach, judgeOthers } from './judge-each.ts';
import { FOUR, judgePlain } from './judge-plain.ts';
import type { Judged } from './judged-block.ts';
import type { LimitColumns } from './limit-columns.ts';

const NOT_APPLYING = STATES.indexOf('does not apply');

export interface Looks {
  /** How many points a block holds at most. */
  readonly size: number;
  number(name: string): Looked;
  /** A cell that says whether a limit applies: 1, 0, or NaN when that cannot be told. */
  flag(name: string): Float64Array;
}

/** Judges a limit over the first `count` points of a block, into columns from `at` on. */
export type JudgeBlock = (count: number, columns: LimitColumns, at: number) => void;

/** A limit that applies at no point. */
export const judgeRuledOut: JudgeBlock = (count, { state, room, ratio }, at) => {
  state.fill(NOT_APPLYING, at, at + count);
  room.fill(Number.NaN, at, at + count);
  ratio.fill(Number.NaN, at, at + count);
};

/** A limit made ready to be judged over blocks. */
export function judgeBlock(rule: LimitRule, { size, number, flag }: Looks): JudgeBlock {
  const { applies } = rule;
  const low = boundColumn(rule.low, Number.NEGATIVE_INFINITY, size, number);
  const high = boundColumn(rule.high, Number.POSITIVE_INFINITY, size, number);
  const span = spanColumn(low, high, size);
  const judged: Judged = {
    rule,
    value: number(rule.result),
    low: low.numbers,
    high: high.numbers,
    span: span.numbers,
    appliesWhen: typeof applies === 'object' ? 0 : 1,
    ...(applies === undefined ? {} : { flags: flag(typeof applies === 'string' ? applies : applies.not) }),
  };
  const moving = [low, high, span].filter((it) => !it.isFixed);
  return (count, columns, at) => {
    for (const column of moving) column.update(count);
    const inFours = count - (count % FOUR);
    if (!judgePlain(judged, columns, at, inFours)) judgeOthers(judged, columns, at, inFours);
    judgeEach(judged, columns, at, inFours, count);
  };
}
