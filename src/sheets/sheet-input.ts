import type { Limit } from '../drawings/limits.ts';
import type { Values } from '../drawings/values.ts';
import type { Cautions } from '../order/cautions.ts';
import { underHoles } from '../order/under-holes.ts';
import type { CellName } from '../plan/names.ts';
import type { Plan, Units } from '../plan/plan.ts';
import { standIns } from '../plan/stand-ins.ts';
import { beforeDrilling } from '../workbook/before-drilling.ts';
import type { Answer } from '../workbook/engine.ts';
import type { Judgement } from '../workbook/judged.ts';
import type { Lettering } from './lettering/lettering.ts';
import type { PaperName } from './page/paper.ts';
import { Printout } from './page/printout.ts';

/** What every kind of sheet is made from. */
export interface SheetInput {
  readonly plan: Plan;
  /** Null: the base values. */
  readonly scenario: string | null;
  /** The workbook's answer for any cell, in that scenario. */
  readonly answer: (name: CellName) => Answer;
  readonly judgement: Judgement;
  /** Year-month-day, given from outside so that a sheet can be made again to the last byte. */
  readonly date: string;
  readonly paper: PaperName;
  readonly units: Units;
  readonly lettering: Lettering;
}

/** The release this is, as the title block shows it. */
const VERSION = 'Sternmount 0.1';

/** What whoever drills by these sheets reads first. */
export const cautionsOf = ({ judgement, plan, scenario, units, answer }: SheetInput): Cautions =>
  beforeDrilling(
    judgement,
    plan,
    scenario,
    units,
    underHoles((name) => answer(name).value),
  );

/** An empty printout with the plan's own title block, and across its head what stops the work. */
export const printoutFor = (input: SheetInput, name: string, stop?: string): Printout =>
  new Printout(
    {
      ...(stop === undefined ? {} : { stop }),
      name,
      plan: input.plan.title,
      scenario: input.scenario,
      date: input.date,
      version: VERSION,
      standIns: standIns(input.plan, input.scenario).length,
    },
    input.paper,
    input.lettering,
  );

/** The answers as a drawing reads them. */
export const valuesOf = ({ answer }: SheetInput): Values => ({
  number(name) {
    const { value } = answer(name);
    return typeof value === 'number' ? value : null;
  },
  flag(name) {
    const { value } = answer(name);
    return typeof value === 'boolean' ? value : null;
  },
});

/** The limits as a drawing needs them. */
export const limitsOf = ({ judgement }: SheetInput): Limit[] =>
  judgement.limits.map(({ name, verdict, value, low, high }) => ({
    name,
    state: verdict.state,
    value: value ?? null,
    low: low ?? null,
    high: high ?? null,
  }));
