import type { Plan } from '../../plan/plan.ts';
import { stepOf } from '../../plan/step-of.ts';
import type { Session } from '../session.ts';
import { freedAmong, usuallyFreed } from './free-choices.ts';
import { proposalsAsk } from './proposals-ask.ts';
import type { StudyCall } from './registry.ts';

type Look = Pick<Session, 'value' | 'workbook'>;

/** The choices that a plan's proposals may move: those that the owner freed, else the usual ones. */
export function freeIn(plan: Plan, session: Pick<Session, 'value'>): readonly string[] {
  const kept = plan.studies.find((it) => it.study === 'proposals')?.settings['free'];
  if (Array.isArray(kept)) return kept.filter((it) => typeof it === 'string');
  return usuallyFreed(session.value('strut_count'));
}

/** The search for proposals for the plan as it is shown, the same question wherever it is asked; undefined where nothing is free. */
export function proposalsCall(
  plan: Plan,
  session: Look,
  free: readonly string[],
): StudyCall<'proposals'> | undefined {
  if (freedAmong(plan, free).length === 0) return undefined;
  const ask = proposalsAsk({
    plan,
    scenario: plan.active,
    free,
    value: (name) => session.value(name),
    uses: session.workbook?.uses() ?? new Map(),
    stepOf: (cell) => stepOf(cell, plan.units),
  });
  return {
    study: 'proposals',
    ask,
    key: `${ask.freed.map((it) => it.name).join(' ')} ${plan.units} ${ask.readings?.share ?? 0}`,
  };
}
