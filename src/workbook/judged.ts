import { classAt, type LimitClass } from '../calc/limits/classes.ts';
import { judge, type LeastRoom, leastRoom, type Verdict } from '../calc/limits/judge.ts';
import type { OwnCell, OwnLimit } from '../plan/plan.ts';
import type { Bound } from '../plan/template.ts';
import { textSentence } from './contents.ts';
import type { Answer } from './engine.ts';
import { cellsOf, judgedNumber, type LimitRule, limitRules } from './limit-rule.ts';

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
  /** What it means, at this value, that it is outside. */
  readonly class: LimitClass;
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

function boundOf(bound: Bound | undefined, look: Look): number | undefined {
  if (bound === undefined || typeof bound === 'number') return bound;
  if (typeof bound === 'string') return judgedNumber(look(bound).value) ?? Number.NaN;
  return 0 - (judgedNumber(look(bound.minus).value) ?? Number.NaN);
}

function appliesOf({ applies }: LimitRule, look: Look): boolean | undefined {
  if (applies === undefined) return true;
  const { value } = look(typeof applies === 'string' ? applies : applies.not);
  if (typeof value !== 'boolean') return undefined;
  return typeof applies === 'string' ? value : !value;
}

/** Why a limit has no answer: whether it applies, what it judges, or a bound of it cannot be computed or is no number. */
function missing(rule: LimitRule, look: Look): string {
  for (const name of cellsOf(rule)) {
    const { value, why } = look(name);
    if (why !== undefined) return why;
    if (typeof value === 'string') return textSentence(name, value);
  }
  return 'These numbers are so far apart that no room can be worked out between them.';
}

function judged(rule: LimitRule, look: Look): LimitAnswer {
  const { name, result, near, graded, mustExist, lowIsOutside, own } = rule;
  const value = judgedNumber(look(result).value);
  const low = boundOf(rule.low, look);
  const high = boundOf(rule.high, look);
  const applies = appliesOf(rule, look);
  const verdict = judge({ value, low, high, near, applies, graded, mustExist, lowIsOutside });
  const why = verdict.state === 'no answer' ? missing(rule, look) : undefined;
  return {
    name,
    result,
    value,
    low: Number.isNaN(low) ? undefined : low,
    high: Number.isNaN(high) ? undefined : high,
    near,
    graded,
    verdict,
    class: classAt(rule, value),
    ...(why === undefined ? {} : { why }),
    ...(own === undefined ? {} : { own }),
  };
}

/** These limits, as the cells that `look` gives have them. */
export function judgeRules(look: Look, rules: readonly LimitRule[]): Judgement {
  const limits = rules.map((rule) => judged(rule, look));
  return {
    limits,
    leastRoom: leastRoom(limits),
    unanswered: limits.filter((it) => it.verdict.state === 'no answer').length,
  };
}

/** Every limit in the workbook's order, then the owner's own. */
export const judgeAll = (
  look: Look,
  own: readonly OwnLimit[] = [],
  cells: readonly OwnCell[] = [],
): Judgement => judgeRules(look, limitRules(own, cells));
