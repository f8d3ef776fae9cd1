import { CAPS } from '../plan/caps.ts';
import { openPlan } from '../plan/file/open-plan.ts';
import { newPlan } from '../plan/new-plan.ts';
import { type Plan, scenarioNamed } from '../plan/plan.ts';
import { readCapped } from './read-capped.ts';
import { systemFault } from './system-fault.ts';

export type Loaded =
  | { readonly ok: true; readonly plan: Plan; readonly scenario: string | null }
  | { readonly ok: false; readonly why: string };

const no = (why: string): Loaded => ({ ok: false, why });

const NOT_READ = {
  folder: 'it is a folder',
  'too large': `a plan has ${CAPS.file} bytes at most, and this is larger`,
} as const;

function textOf(file: string): { readonly text: string } | { readonly why: string } {
  try {
    const read = readCapped(file, CAPS.file);
    if (read.ok) return read;
    return { why: `The plan ${file} cannot be read: ${NOT_READ[read.why]}.` };
  } catch (error) {
    return {
      why: `The plan ${file} cannot be read: ${systemFault(error, { ENOENT: 'there is no such file' })}.`,
    };
  }
}

/** The plan a command was given, or the template's own when it was given none, with the scenario asked for. */
export function loadPlan(file: string | undefined, scenario: string | undefined): Loaded {
  let plan = newPlan('Template values');
  if (file !== undefined) {
    const read = textOf(file);
    if ('why' in read) return no(read.why);
    const opened = openPlan(read.text);
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
