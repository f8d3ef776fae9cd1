import { CAPS } from '../caps.ts';
import { ownNameRefusal } from '../own-name.ts';
import type { OwnCell, Plan, Reading, Scenario } from '../plan.ts';
import { formulaUses, renameInFormula } from '../rename-in-formula.ts';
import { lineRefusal, linesRefusal } from '../text-refusal.ts';
import { type Edited, edited, refuse } from './edited.ts';

const has = (plan: Plan, name: string): boolean => plan.ownCells.some((cell) => cell.name === name);

const unknown = (name: string): Edited => refuse(`There is no own cell named ${name}.`);

function cellRefusal({ name, label, unit, value, formula, note }: OwnCell): string | undefined {
  if (value !== null && !Number.isFinite(value)) return `${name} holds a number or nothing, not ${value}.`;
  if (formula !== undefined && !formula.startsWith('=')) return `The formula of ${name} starts with =.`;
  return (
    lineRefusal(`The label of ${name}`, label, CAPS.name) ??
    lineRefusal(`The unit of ${name}`, unit, CAPS.name) ??
    linesRefusal(`The formula of ${name}`, formula) ??
    linesRefusal(`The note on ${name}`, note)
  );
}

/** Puts an own cell in place of the one with its name, or adds it at the end. */
export function setOwnCell(plan: Plan, cell: OwnCell): Edited {
  const known = has(plan, cell.name);
  const why = (known ? undefined : ownNameRefusal(plan, cell.name)) ?? cellRefusal(cell);
  if (why !== undefined) return refuse(why);
  const ownCells = known
    ? plan.ownCells.map((it) => (it.name === cell.name ? cell : it))
    : [...plan.ownCells, cell];
  return edited({ ...plan, ownCells });
}

/** Everything that uses an own cell, as it is called in a sentence. */
function usersOf(plan: Plan, name: string): readonly string[] {
  const uses = (formula: string | undefined): boolean => formula !== undefined && formulaUses(formula, name);
  return [
    ...[...plan.inputs].filter(([, reading]) => uses(reading.formula)).map(([input]) => input),
    ...plan.scenarios.flatMap((scenario) =>
      [...scenario.overrides]
        .filter(([, reading]) => uses(reading.formula))
        .map(([input]) => `${input} in “${scenario.name}”`),
    ),
    ...plan.ownCells.filter((cell) => cell.name !== name && uses(cell.formula)).map((cell) => cell.name),
    ...plan.limits.filter((limit) => limit.result === name).map((limit) => `the limit ${limit.name}`),
  ];
}

/** Takes an own cell away, unless something uses it. */
export function deleteOwnCell(plan: Plan, name: string): Edited {
  if (!has(plan, name)) return unknown(name);
  const users = usersOf(plan, name);
  if (users.length > 0) return refuse(`${name} is used by ${users.join(', ')}: change that first.`);
  return edited({ ...plan, ownCells: plan.ownCells.filter((cell) => cell.name !== name) });
}

/** A cell or reading with one name written anew in its formula, and in the text typed when that is the formula. */
function rewritten<T extends { readonly formula?: string }>(it: T, from: string, to: string): T {
  if (it.formula === undefined) return it;
  const formula = renameInFormula(it.formula, from, to);
  return formula === it.formula ? it : { ...it, formula };
}

function rewrittenReading(reading: Reading, from: string, to: string): Reading {
  const changed = rewritten(reading, from, to);
  if (changed === reading || reading.typed === undefined) return changed;
  return { ...changed, typed: renameInFormula(reading.typed, from, to) };
}

/** The same map when none of its formulas uses the name. */
function rewrittenReadings(
  readings: ReadonlyMap<string, Reading>,
  from: string,
  to: string,
): ReadonlyMap<string, Reading> {
  const next = new Map([...readings].map(([name, reading]) => [name, rewrittenReading(reading, from, to)]));
  return [...next].every(([name, reading]) => readings.get(name) === reading) ? readings : next;
}

function rewrittenScenario(scenario: Scenario, from: string, to: string): Scenario {
  const overrides = rewrittenReadings(scenario.overrides, from, to);
  return overrides === scenario.overrides ? scenario : { ...scenario, overrides };
}

const tooLong = (formula: string | undefined): boolean => formula !== undefined && formula.length > CAPS.text;

/** Gives an own cell another name, and writes that into every formula and limit that uses it. */
export function renameOwnCell(plan: Plan, from: string, to: string): Edited {
  if (!has(plan, from)) return unknown(from);
  if (from === to) return edited(plan);
  const why = ownNameRefusal(plan, to);
  if (why !== undefined) return refuse(why);
  const next: Plan = {
    ...plan,
    inputs: rewrittenReadings(plan.inputs, from, to),
    scenarios: plan.scenarios.map((it) => rewrittenScenario(it, from, to)),
    ownCells: plan.ownCells.map((cell) => {
      const changed = rewritten(cell, from, to);
      return cell.name === from ? { ...changed, name: to } : changed;
    }),
    limits: plan.limits.map((limit) => (limit.result === from ? { ...limit, result: to } : limit)),
  };
  const formulas = [
    ...next.ownCells,
    ...next.inputs.values(),
    ...next.scenarios.flatMap((it) => [...it.overrides.values()]),
  ];
  return formulas.some((it) => tooLong(it.formula))
    ? refuse(`With the name ${to}, a formula would be longer than ${CAPS.text} characters.`)
    : edited(next);
}
