import { inputNamed } from '../book.ts';
import { type Plan, type Reading, readingOf, type Scenario } from '../plan.ts';
import { planClash } from '../plan-clash.ts';
import { type Edited, edited, refuse } from './edited.ts';

interface By {
  readonly who?: string;
  readonly when?: string;
}

/** The base and every scenario that has its own value take a reading up: a hole is where it is in all of them. */
const everywhere = (plan: Plan, name: string, reading: Reading): Plan => ({
  ...plan,
  inputs: new Map(plan.inputs).set(name, reading),
  scenarios: plan.scenarios.map(
    (it): Scenario =>
      it.overrides.has(name) ? { ...it, overrides: new Map(it.overrides).set(name, reading) } : it,
  ),
});

function oneLocked(plan: Plan, name: string, by: By): Edited {
  const cell = inputNamed(name);
  if (cell?.kind !== 'choice') return refuse(`${cell?.label ?? name} is not chosen, so no hole fixes it.`);
  const reading = plan.fit.fitted.get(name);
  if (reading === undefined) {
    return refuse(`${cell.label} has no reading as fitted yet. Enter what was drilled, then lock it.`);
  }
  const planned = plan.fit.drilled.get(name)?.planned ?? readingOf(plan, name)?.value ?? null;
  return edited({
    ...everywhere(plan, name, reading),
    locked: new Set([...plan.locked, name]),
    fit: { ...plan.fit, drilled: new Map(plan.fit.drilled).set(name, { planned, ...by }) },
  });
}

/**
 * Locks choices as they were drilled: what was read as fitted takes the place of what was planned, which is kept
 * beside it. A choice that was not read is refused, for nobody knows where its hole is.
 */
export function lockAsDrilled(plan: Plan, names: readonly string[], by: By): Edited {
  const locked = names.reduce<Edited>((so, name) => (so.ok ? oneLocked(so.plan, name, by) : so), {
    ok: true,
    plan,
  });
  if (!locked.ok) return locked;
  const clash = planClash(locked.plan);
  return clash === undefined ? locked : refuse(clash.why);
}
