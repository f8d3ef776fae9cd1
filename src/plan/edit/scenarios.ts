import { inputs } from '../book.ts';
import { nameRefusal, tidyName } from '../name-refusal.ts';
import { type Plan, type Reading, readingOf, type Scenario, scenarioNamed } from '../plan.ts';
import { linesRefusal } from '../text-refusal.ts';
import { type Edited, edited, refuse } from './edited.ts';

const unknown = (name: string): Edited => refuse(`There is no scenario named “${name}” in this plan.`);

function newNameRefusal(plan: Plan, name: string): string | undefined {
  const why = nameRefusal('a scenario', name);
  if (why !== undefined) return why;
  return scenarioNamed(plan, name) === undefined
    ? undefined
    : `There is a scenario named “${name}” already: take another name.`;
}

/** A new scenario goes to the end of the list and is shown at once. */
function withScenario(plan: Plan, scenario: Scenario): Edited {
  const why = newNameRefusal(plan, scenario.name);
  if (why !== undefined) return refuse(why);
  return edited({ ...plan, scenarios: [...plan.scenarios, scenario], active: scenario.name });
}

/**
 * Keeps what is shown as a new scenario. Every Mount choice goes into it, so that later edits of the base or of the
 * scenario it came from leave what was kept alone; Boat and Gear follow the base unless they were set apart before.
 */
export function keepScenario(plan: Plan, name: string): Edited {
  const overrides = new Map<string, Reading>();
  const before = scenarioNamed(plan, plan.active)?.overrides;
  for (const cell of inputs) {
    const reading = readingOf(plan, cell.name);
    if (reading === undefined) continue;
    if (cell.kind === 'choice' || before?.has(cell.name) === true) overrides.set(cell.name, reading);
  }
  return withScenario(plan, { name: tidyName(name), overrides });
}

/** Shows a scenario; null: the base values. */
export function switchTo(plan: Plan, name: string | null): Edited {
  if (name !== null && scenarioNamed(plan, name) === undefined) return unknown(name);
  return edited(name === plan.active ? plan : { ...plan, active: name });
}

/** Copies a scenario with all that is its own, and shows the copy. */
export function copyScenario(plan: Plan, from: string, name: string): Edited {
  const scenario = scenarioNamed(plan, from);
  return scenario === undefined ? unknown(from) : withScenario(plan, { ...scenario, name: tidyName(name) });
}

export function renameScenario(plan: Plan, from: string, to: string): Edited {
  const name = tidyName(to);
  if (scenarioNamed(plan, from) === undefined) return unknown(from);
  if (name === from) return edited(plan);
  const why = newNameRefusal(plan, name);
  if (why !== undefined) return refuse(why);
  return edited({
    ...plan,
    scenarios: plan.scenarios.map((it) => (it.name === from ? { ...it, name } : it)),
    active: plan.active === from ? name : plan.active,
  });
}

/** Notes something about a scenario; an empty text takes the note away. */
export function setScenarioNote(plan: Plan, name: string, note: string): Edited {
  if (scenarioNamed(plan, name) === undefined) return unknown(name);
  const why = linesRefusal(`The note on “${name}”`, note);
  if (why !== undefined) return refuse(why);
  const noted = ({ note: _before, ...rest }: Scenario): Scenario => (note === '' ? rest : { ...rest, note });
  return edited({ ...plan, scenarios: plan.scenarios.map((it) => (it.name === name ? noted(it) : it)) });
}

/** Takes a scenario away; if it was shown, the base values are shown instead. */
export function deleteScenario(plan: Plan, name: string): Edited {
  if (scenarioNamed(plan, name) === undefined) return unknown(name);
  return edited({
    ...plan,
    scenarios: plan.scenarios.filter((it) => it.name !== name),
    active: plan.active === name ? null : plan.active,
  });
}
