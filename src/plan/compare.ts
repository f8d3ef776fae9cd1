import { inputs } from './book.ts';
import { type Plan, type Reading, readingOf, scenarioNamed } from './plan.ts';

/** One input across the scenarios compared. */
export interface ComparedInput {
  readonly name: string;
  /** Whether any two columns hold something different. */
  readonly differs: boolean;
  /** Its reading in each column. */
  readonly readings: readonly (Reading | undefined)[];
  /** Which columns have a value of their own rather than the base's. */
  readonly own: readonly boolean[];
}

export interface Comparison {
  /** The columns, in the order asked; null is the base. */
  readonly scenarios: readonly (string | null)[];
  /** Inputs that differ first, each part in the workbook's order. */
  readonly inputs: readonly ComparedInput[];
}

const sameContent = (a: Reading | undefined, b: Reading | undefined): boolean =>
  a?.formula === b?.formula && (a?.formula !== undefined || a?.value === b?.value);

/** A plan's scenarios side by side; the base and all of them unless told which. Names the plan lacks are left out. */
export function compare(
  plan: Plan,
  which: readonly (string | null)[] = [null, ...plan.scenarios.map((it) => it.name)],
): Comparison {
  const scenarios = which.filter((name) => name === null || scenarioNamed(plan, name) !== undefined);
  const rows = inputs.map(({ name }): ComparedInput => {
    const readings = scenarios.map((scenario) => readingOf(plan, name, scenario));
    return {
      name,
      differs: readings.some((reading) => !sameContent(reading, readings[0])),
      readings,
      own: scenarios.map((scenario) => scenarioNamed(plan, scenario)?.overrides.has(name) === true),
    };
  });
  return { scenarios, inputs: [...rows.filter((it) => it.differs), ...rows.filter((it) => !it.differs)] };
}

/** Inputs that a scenario holds differently from the base, in the workbook's order. */
export const changedFromBase = (plan: Plan, scenario: string): readonly string[] =>
  compare(plan, [null, scenario])
    .inputs.filter((it) => it.differs)
    .map((it) => it.name);
