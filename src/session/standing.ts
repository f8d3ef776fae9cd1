import type { State } from '../calc/limits/judge.ts';
import { byWorst } from '../calc/limits/worst-first.ts';
import { inputNamed, limitNamed } from '../plan/book.ts';
import type { Plan } from '../plan/plan.ts';
import { isStandIn } from '../plan/stand-ins.ts';
import type { LimitAnswer } from '../workbook/judged.ts';

/** Limits as the board shows them: the worst first, each state apart. */
export interface Standing {
  readonly outside: readonly LimitAnswer[];
  readonly unanswered: readonly LimitAnswer[];
  readonly near: readonly LimitAnswer[];
  readonly inside: readonly LimitAnswer[];
  readonly notApplying: readonly LimitAnswer[];
}

export function standingOf(limits: readonly LimitAnswer[]): Standing {
  const of = (state: State): LimitAnswer[] => limits.filter((it) => it.verdict.state === state).sort(byWorst);
  return {
    outside: of('outside'),
    unanswered: of('no answer'),
    near: of('near'),
    inside: of('inside'),
    notApplying: of('does not apply'),
  };
}

/** Names that a cell rests on, through every formula, inputs at the end. */
export function restsOn(name: string, uses: ReadonlyMap<string, readonly string[]>): ReadonlySet<string> {
  const seen = new Set<string>();
  const walk = (it: string): void => {
    if (seen.has(it)) return;
    seen.add(it);
    for (const next of uses.get(it) ?? []) walk(next);
  };
  walk(name);
  return seen;
}

/** Names that a limit rests on: its result, and its bounds. */
export function limitRestsOn(
  limit: LimitAnswer,
  uses: ReadonlyMap<string, readonly string[]>,
): ReadonlySet<string> {
  const all = new Set(restsOn(limit.result, uses));
  const cell = limitNamed(limit.name);
  for (const bound of [cell?.low, cell?.high]) {
    if (typeof bound === 'string') all.add(bound);
    else if (typeof bound === 'object') all.add(bound.minus);
  }
  return all;
}

/** Stand-ins among the names that something rests on. */
export const standInsAmong = (plan: Plan, names: Iterable<string>): readonly string[] =>
  [...names].filter((name) => inputNamed(name) !== undefined && isStandIn(plan, name));

/** Choices among them, which move the limit. */
export const choicesAmong = (names: Iterable<string>): readonly string[] =>
  [...names].filter((name) => inputNamed(name)?.kind === 'choice');
