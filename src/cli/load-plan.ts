import { readFileSync } from 'node:fs';
import { openPlan } from '../plan/file/open-plan.ts';
import { newPlan } from '../plan/new-plan.ts';
import { type Plan, scenarioNamed } from '../plan/plan.ts';

export type Loaded =
  | { readonly ok: true; readonly plan: Plan; readonly scenario: string | null }
  | { readonly ok: false; readonly why: string };

const no = (why: string): Loaded => ({ ok: false, why });

/** The plan a command was given, or the template's own when it was given none, with the scenario asked for. */
export function loadPlan(file: string | undefined, scenario: string | undefined): Loaded {
  let plan = newPlan('Template values');
  if (file !== undefined) {
    let text: string;
    try {
      text = readFileSync(file, 'utf8');
    } catch {
      return no(`The plan ${file} cannot be read: there is no such file, or it is closed to you.`);
    }
    const opened = openPlan(text);
    if (!opened.ok) return no(`The plan ${file} cannot be opened (${opened.reason}): ${opened.why}`);
    plan = opened.plan;
  }
  if (scenario !== undefined && scenarioNamed(plan, scenario) === undefined) {
    const names = plan.scenarios.map((it) => `“${it.name}”`).join(', ');
    return no(
      `There is no scenario “${scenario}” in this plan; ${names === '' ? 'it has none' : `it has ${names}`}.`,
    );
  }
  return { ok: true, plan, scenario: scenario ?? null };
}
