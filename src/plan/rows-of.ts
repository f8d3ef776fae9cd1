import type { Plan } from './plan.ts';

const sum = (counts: readonly number[]): number => counts.reduce((total, count) => total + count, 0);

/** How many rows a plan's file has, over all its lists. */
export const rowsOf = (plan: Plan): number =>
  plan.inputs.size +
  plan.limits.length +
  plan.ownCells.length +
  sum(plan.tables.map((table) => 1 + table.rows.length + (table.notes?.length ?? 0))) +
  sum(plan.scenarios.map((scenario) => 1 + scenario.overrides.size)) +
  sum(plan.studies.map((study) => 1 + Object.keys(study.settings).length)) +
  plan.fit.fitted.size +
  plan.fit.drilled.size +
  plan.fit.steps.length +
  sum(plan.fit.wentOn.map((it) => 1 + it.despite.length)) +
  plan.fit.unticked.length +
  plan.fit.handover.size;
