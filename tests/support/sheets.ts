import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { loadLettering } from '../../src/cli/faces.ts';
import { openPlan } from '../../src/plan/file/open-plan.ts';
import type { Plan } from '../../src/plan/plan.ts';
import type { Lettering } from '../../src/sheets/lettering/lettering.ts';
import type { SheetInput } from '../../src/sheets/sheet-input.ts';
import { Workbook } from '../../src/workbook/workbook.ts';

let loaded: Promise<Lettering> | undefined;

/** The lettering, loaded once. */
export const lettering = (): Promise<Lettering> => {
  loaded ??= loadLettering();
  return loaded;
};

export function demoPlan(name: string): Plan {
  const opened = openPlan(
    readFileSync(resolve(import.meta.dirname, `../../demo-data/${name}.plan.json`), 'utf8'),
  );
  if (!opened.ok) throw new Error(opened.why);
  return opened.plan;
}

/** One workbook shows every plan: to build one takes far longer than to move it on. */
let shown: Workbook | undefined;

/** What a sheet is made from, for a plan in one of its scenarios. */
export async function inputFor(
  plan: Plan,
  scenario: string | null = null,
  more: Partial<SheetInput> = {},
): Promise<SheetInput> {
  shown ??= new Workbook(plan, scenario);
  const workbook = shown;
  workbook.show(plan, scenario);
  const answers = new Map(workbook.names.map((name) => [name, workbook.answer(name)]));
  const judgement = workbook.judgement();
  return {
    plan,
    scenario,
    answer: (name) => answers.get(name) ?? { value: null, why: `There is no cell named ${name}.` },
    judgement,
    date: '2031-04-09',
    paper: 'a4',
    units: 'both',
    lettering: await lettering(),
    ...more,
  };
}
