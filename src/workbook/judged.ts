import { judge, type LeastRoom, leastRoom, type Verdict } from '../calc/limits/judge.ts';
import { limitCells } from '../plan/book.ts';
import type { OwnLimit } from '../plan/plan.ts';
import type { Bound, LimitCell } from '../plan/template.ts';
import type { Answer } from './engine.ts';

/** One limit as it stands, in the result's base unit. */
export interface LimitAnswer {
  readonly name: string;
  readonly result: string;
  readonly value: number | undefined;
  readonly low: number | undefined;
  readonly high: number | undefined;
  readonly near: number;
  readonly graded: boolean;
  readonly verdict: Verdict;
  /** What is missing, when there is no answer. */
  readonly why?: string;
  /** An owner's own limit, not the workbook's. */
  readonly own?: true;
}

export interface Judgement {
  readonly limits: readonly LimitAnswer[];
  readonly leastRoom: LeastRoom | undefined;
  /** How many limits apply and have no answer. */
  readonly unanswered: number;
}

type Look = (name: string) => Answer;

/** A yes/no result counts as 1 or 0. */
const numberOf = (answer: Answer): number | undefined => {
  if (typeof answer.value === 'number') return answer.value;
  return typeof answer.value === 'boolean' ? Number(answer.value) : undefined;
};

function boundOf(bound: Bound | undefined, look: Look): number | undefined {
  if (bound === undefined || typeof bound === 'number') return bound;
  if (typeof bound === 'string') return numberOf(look(bound)) ?? Number.NaN;
  return 0 - (numberOf(look(bound.minus)) ?? Number.NaN);
}

function appliesOf(cell: LimitCell, look: Look): boolean | undefined {
  if (cell.applies === undefined) return true;
  const { value } = look(typeof cell.applies === 'string' ? cell.applies : cell.applies.not);
  if (typeof value !== 'boolean') return undefined;
  return typeof cell.applies === 'string' ? value : !value;
}

const namesIn = (...bounds: (Bound | undefined)[]): string[] =>
  bounds.flatMap((bound) =>
    typeof bound === 'string' ? [bound] : typeof bound === 'object' ? [bound.minus] : [],
  );

/** Why a limit has no answer: what it judges, whether it applies, or a bound of it cannot be computed. */
function missing(cell: LimitCell, look: Look): string | undefined {
  const condition = typeof cell.applies === 'object' ? cell.applies.not : cell.applies;
  for (const name of [
    ...(condition === undefined ? [] : [condition]),
    cell.result,
    ...namesIn(cell.low, cell.high),
  ]) {
    const { why } = look(name);
    if (why !== undefined) return why;
  }
  return undefined;
}

function judged(cell: LimitCell, look: Look): LimitAnswer {
  const applies = appliesOf(cell, look);
  const value = numberOf(look(cell.result));
  const low = boundOf(cell.low, look);
  const high = boundOf(cell.high, look);
  const graded = cell.graded !== false;
  const verdict = judge({
    value,
    low,
    high,
    near: cell.near,
    applies,
    graded,
    mustExist: cell.must_exist === true,
    lowIsPast: cell.low_is_past === true,
  });
  const why = verdict.state === 'no answer' ? missing(cell, look) : undefined;
  return {
    name: cell.name,
    result: cell.result,
    value,
    low: Number.isNaN(low) ? undefined : low,
    high: Number.isNaN(high) ? undefined : high,
    near: cell.near,
    graded,
    verdict,
    ...(why === undefined ? {} : { why }),
  };
}

function judgedOwn(limit: OwnLimit, look: Look): LimitAnswer {
  const answer = look(limit.result);
  const value = numberOf(answer);
  const { low, high, near } = limit;
  const verdict = judge({ value, low, high, near, applies: true, graded: true });
  return {
    name: limit.name,
    result: limit.result,
    value,
    low,
    high,
    near,
    graded: true,
    verdict,
    own: true,
    ...(answer.why === undefined ? {} : { why: answer.why }),
  };
}

/** Every limit in the workbook's order, then the owner's own. */
export function judgeAll(look: Look, own: readonly OwnLimit[] = []): Judgement {
  const limits = [
    ...limitCells.map((cell) => judged(cell, look)),
    ...own.map((limit) => judgedOwn(limit, look)),
  ];
  return {
    limits,
    leastRoom: leastRoom(limits),
    unanswered: limits.filter((it) => it.verdict.state === 'no answer').length,
  };
}
