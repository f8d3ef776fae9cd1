import { newPlan } from '../../../src/plan/new-plan.ts';
import type { Plan } from '../../../src/plan/plan.ts';
import { withMount } from '../../../src/session/own-boat/with-mount.ts';
import { benchOf } from '../../../src/session/studies/bench-of.ts';
import { ReplayEvaluators } from '../../../src/session/studies/evaluators.ts';
import { mountAsk } from '../../../src/session/studies/mount-ask.ts';
import { start } from '../../../src/session/studies/registry.ts';
import type { FirstMount } from '../../../src/studies/first-mount/ask.ts';
import { finish } from '../../../src/studies/study.ts';
import { Workbook } from '../../../src/workbook/workbook.ts';
import { coarseLook } from './coarse-look.ts';

const workbook = new Workbook(newPlan('Any boat'), null);
const evaluators = new ReplayEvaluators(workbook);

export interface Tried {
  readonly found: FirstMount;
  /** Limits that the formula engine says fail with the mount in the plan. */
  readonly failing: readonly string[];
  readonly plan: Plan;
}

export function tried(boat: Plan): Tried {
  const found = finish(
    start(benchOf(workbook, evaluators, boat), { study: 'mount', ask: mountAsk(boat, null) }),
  );
  const plan = withMount(boat, found.mount.values);
  workbook.show(plan, null);
  const failing = workbook
    .judgement()
    .limits.filter(({ verdict: { state } }) => state === 'outside' || state === 'no answer')
    .map((it) => it.name);
  return { found, failing, plan };
}

/** What the other look finds for a boat. */
export const lookedAt = (boat: Plan): ReturnType<typeof coarseLook> => coarseLook(boat, evaluators.of(boat));
