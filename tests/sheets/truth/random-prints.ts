import fc from 'fast-check';
import { newPlan } from '../../../src/plan/new-plan.ts';
import type { Plan } from '../../../src/plan/plan.ts';
import { PAPERS, type PaperName } from '../../../src/sheets/page/paper.ts';
import { demoPlan } from '../../support/sheets.ts';
import { randomInputs } from '../../workbook/random-inputs.ts';
import { allTold } from './all-told.ts';
import type { Units } from './read-job.ts';
import { compare } from './told.ts';

export const DEMOS = [
  'start',
  'raked-aft',
  'beside-the-ladder',
  'stern-hung-rudder',
  'measured-afloat',
] as const;
export const UNITS = ['mm', 'in', 'both'] as const;

/** Every demo plan in each of its scenarios, on each paper, in each unit. */
export const demoPrints = (): readonly Print[] =>
  DEMOS.flatMap((name) => {
    const plan = demoPlan(name);
    return [null, ...plan.scenarios.map((it) => it.name)].flatMap((scenario) =>
      PAPERS.flatMap((paper) => UNITS.map((units) => ({ plan, scenario, paper, units }))),
    );
  });

/** A plan with the paper and the units it is printed in. */
export interface Print {
  readonly plan: Plan;
  readonly scenario: string | null;
  readonly paper: PaperName;
  readonly units: Units;
}

const base = newPlan('Drawn at random');

const prints: fc.Arbitrary<Print> = fc
  .record({
    drawn: randomInputs,
    paper: fc.constantFrom(...PAPERS),
    units: fc.constantFrom<Units>(...UNITS),
  })
  .map(({ drawn, paper, units }) => ({
    plan: {
      ...base,
      inputs: new Map(
        [...base.inputs].map(([name, it]) => [name, { ...it, value: drawn[name] ?? it.value }]),
      ),
    },
    scenario: null,
    paper,
    units,
  }));

export const randomPrints = (numRuns: number, seed: number): readonly Print[] =>
  fc.sample(prints, { numRuns, seed });

/** What two tell of it and not alike, and what the page says and the paper does not. */
export async function disagreements({ plan, scenario, paper, units }: Print): Promise<readonly string[]> {
  const { told, missing } = await allTold(plan, scenario, paper, units);
  return [...compare(told).differs, ...missing.map((words) => `not on paper: ${words}`)];
}
