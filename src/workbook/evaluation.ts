import { results } from '../plan/book.ts';
import type { Plan } from '../plan/plan.ts';
import { textSentence } from './contents.ts';
import type { LimitAnswer } from './judged.ts';
import type { Workbook } from './workbook.ts';

/** An evaluation as plain data, base units, the shape the command line prints. */
export interface Evaluation {
  readonly results: Readonly<Record<string, number | null>>;
  readonly reasons: Readonly<Record<string, string>>;
  readonly limits: readonly {
    readonly name: string;
    readonly value: number | null;
    readonly low: number | null;
    readonly high: number | null;
    readonly state: string;
    readonly room: number | null;
    readonly room_ratio: number | null;
    /** Why there is no answer, where there is none. */
    readonly why?: string;
  }[];
  readonly least_room: { readonly name: string; readonly value: number } | null;
  readonly unanswered: number;
}

const limitRow = (it: LimitAnswer): Evaluation['limits'][number] => {
  const applies = it.verdict.state !== 'does not apply';
  return {
    name: it.name,
    value: applies ? (it.value ?? null) : null,
    low: applies ? (it.low ?? null) : null,
    high: applies ? (it.high ?? null) : null,
    state: it.verdict.state,
    room: it.verdict.room ?? null,
    room_ratio: it.verdict.ratio ?? null,
    ...(it.why === undefined ? {} : { why: it.why }),
  };
};

/** All results and limits of a workbook as it stands. */
export function evaluation(workbook: Workbook, plan: Plan): Evaluation {
  const values: Record<string, number | null> = {};
  const reasons: Record<string, string> = {};
  for (const { name } of [...results, ...plan.ownCells]) {
    const { value, why } = workbook.answer(name);
    values[name] = typeof value === 'boolean' ? Number(value) : typeof value === 'number' ? value : null;
    if (why !== undefined) reasons[name] = why;
    else if (typeof value === 'string') reasons[name] = textSentence(name, value);
  }
  const { limits, leastRoom, unanswered } = workbook.judgement();
  return {
    results: values,
    reasons,
    limits: limits.map(limitRow),
    least_room: leastRoom ?? null,
    unanswered,
  };
}
