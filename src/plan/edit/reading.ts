import { inputNamed } from '../book.ts';
import { refusal } from '../bounds.ts';
import { type Plan, type Reading, readingOf, type Scenario, scenarioNamed } from '../plan.ts';
import { planClash } from '../plan-clash.ts';
import type { InputCell } from '../template.ts';
import { lineRefusal, linesRefusal } from '../text-refusal.ts';
import { type Edited, edited, refuse } from './edited.ts';

/** Where an edit of an input goes: a scenario's name, or null for the base and so for every scenario. */
export function editGoesTo(plan: Plan, name: string): string | null {
  const scenario = scenarioNamed(plan, plan.active);
  if (scenario === undefined) return null;
  return inputNamed(name)?.kind === 'choice' || scenario.overrides.has(name) ? scenario.name : null;
}

const without = (map: ReadonlyMap<string, Reading>, name: string): ReadonlyMap<string, Reading> => {
  const rest = new Map(map);
  rest.delete(name);
  return rest;
};

const withOverrides = (
  plan: Plan,
  scenario: string,
  change: (overrides: ReadonlyMap<string, Reading>) => ReadonlyMap<string, Reading>,
): Plan => ({
  ...plan,
  scenarios: plan.scenarios.map(
    (it): Scenario => (it.name === scenario ? { ...it, overrides: change(it.overrides) } : it),
  ),
});

/** Ends a reading's edit: what cannot be so together is refused in whichever scenario it shows. */
function settled(plan: Plan): Edited {
  const clash = planClash(plan);
  return clash === undefined ? edited(plan) : refuse(clash.why);
}

const lockRefusal = (plan: Plan, cell: InputCell): string | undefined =>
  plan.locked.has(cell.name)
    ? `${cell.label} is marked as already drilled. Take the lock off before you change it.`
    : undefined;

function readingRefusal(cell: InputCell, reading: Reading): string | undefined {
  const { value, formula, offBy, typed, unit, who, when, with: tool, note } = reading;
  if (formula === undefined) {
    const why = refusal(cell, value);
    if (why !== undefined) return why;
  } else if (!formula.startsWith('=')) {
    return `The formula of ${cell.label} starts with =; “${formula.slice(0, 40)}” does not.`;
  }
  if (offBy !== undefined && !(offBy >= 0 && offBy < Number.POSITIVE_INFINITY)) {
    return `${cell.label} cannot be off by ${offBy}: it must be a number of at least 0.`;
  }
  return (
    linesRefusal(`The formula of ${cell.label}`, formula) ??
    linesRefusal(`The text typed for ${cell.label}`, typed) ??
    lineRefusal(`The unit of ${cell.label}`, unit) ??
    lineRefusal(`Who read ${cell.label}`, who) ??
    lineRefusal(`When ${cell.label} was read`, when) ??
    lineRefusal(`What ${cell.label} was read with`, tool) ??
    linesRefusal(`The note on ${cell.label}`, note)
  );
}

/**
 * Puts a reading in the place that `editGoesTo` names. A locked choice keeps its value; what is noted about it may
 * still change.
 */
export function setReading(plan: Plan, name: string, reading: Reading): Edited {
  const cell = inputNamed(name);
  if (cell === undefined) return refuse(`There is no input named ${name}.`);
  const before = readingOf(plan, name);
  if (before?.value !== reading.value || before.formula !== reading.formula) {
    const locked = lockRefusal(plan, cell);
    if (locked !== undefined) return refuse(locked);
  }
  const why = readingRefusal(cell, reading);
  if (why !== undefined) return refuse(why);
  const scenario = editGoesTo(plan, name);
  return settled(
    scenario === null
      ? { ...plan, inputs: new Map(plan.inputs).set(name, reading) }
      : withOverrides(plan, scenario, (overrides) => new Map(overrides).set(name, reading)),
  );
}

/** Gives the active scenario a value of its own for any input, the base's to begin with, so that edits go there. */
export function setApart(plan: Plan, name: string): Edited {
  const scenario = scenarioNamed(plan, plan.active);
  if (inputNamed(name) === undefined) return refuse(`There is no input named ${name}.`);
  if (scenario === undefined) {
    return refuse('The base values are shown: switch to a scenario to give it a value of its own.');
  }
  const reading = plan.inputs.get(name);
  if (reading === undefined || scenario.overrides.has(name)) return edited(plan);
  return edited(withOverrides(plan, scenario.name, (overrides) => new Map(overrides).set(name, reading)));
}

/** Drops the active scenario's own value of an input, so that it follows the base again. */
export function followBase(plan: Plan, name: string): Edited {
  const scenario = scenarioNamed(plan, plan.active);
  const override = scenario?.overrides.get(name);
  if (scenario === undefined || override === undefined) return edited(plan);
  const base = plan.inputs.get(name);
  const cell = inputNamed(name);
  if (cell !== undefined && (base?.value !== override.value || base.formula !== override.formula)) {
    const locked = lockRefusal(plan, cell);
    if (locked !== undefined) return refuse(locked);
  }
  return settled(withOverrides(plan, scenario.name, (overrides) => without(overrides, name)));
}
