import { inputs, limitCells, limitNamed } from '../plan/book.ts';
import { type Plan, readingOf, type Value } from '../plan/plan.ts';
import type { Bound, InputCell } from '../plan/template.ts';
import type { Choice } from '../studies/candidates.ts';
import type { PointRange } from '../studies/points.ts';
import type { RemedyAsk } from '../studies/remedies.ts';
import type { Step } from '../units/next-step.ts';
import { restsOn } from './standing.ts';

const nameIn = (bound: Bound | undefined): string[] => {
  if (typeof bound === 'string') return [bound];
  return typeof bound === 'object' ? [bound.minus] : [];
};

/** Inputs that only say what the owner accepts or the gear allows: bounds of limits. */
export const BOUNDS: ReadonlySet<string> = new Set(
  limitCells.flatMap((it) => [...nameIn(it.low), ...nameIn(it.high)]),
);

/** All that decides how a limit stands: its result, its bounds and whether it applies. */
function deciding(
  limit: string,
  plan: Plan,
  uses: ReadonlyMap<string, readonly string[]>,
): ReadonlySet<string> {
  const cell = limitNamed(limit);
  const result = cell?.result ?? plan.limits.find((it) => it.name === limit)?.result;
  const condition = typeof cell?.applies === 'object' ? cell.applies.not : cell?.applies;
  const names = [result, condition, ...nameIn(cell?.low), ...nameIn(cell?.high)].filter(
    (it) => it !== undefined,
  );
  return new Set(names.flatMap((name) => [...restsOn(name, uses)]));
}

/** Every choice that a remedy of any limit may move, over its whole range. */
export const mendingRanges = (plan: Plan, value: (name: string) => Value): readonly PointRange[] =>
  inputs.flatMap((cell): PointRange[] => {
    const { name, kind, only, type } = cell;
    const present = value(name);
    if (kind !== 'choice' || typeof present !== 'number' || plan.locked.has(name)) return [];
    if (readingOf(plan, name)?.formula !== undefined) return [];
    if (only !== undefined) return [{ name, values: only }];
    const [low, high] = cell.usual ?? [cell.min ?? present, cell.max ?? present];
    return [{ name, low: Math.min(low, present), high: Math.max(high, present), whole: type === 'whole' }];
  });

interface Asked {
  readonly limit: string;
  readonly plan: Plan;
  /** Which names each formula uses. */
  readonly uses: ReadonlyMap<string, readonly string[]>;
  readonly value: (name: string) => Value;
  /** A choice's step in the units shown. */
  readonly stepOf: (cell: InputCell) => Step;
}

/**
 * What a search for remedies may move: choices that decide the limit, neither drilled nor following a formula, inside
 * their usual range; what the owner accepts stands apart.
 */
export function remedyAsk({ limit, plan, uses, value, stepOf }: Asked): RemedyAsk {
  const names = deciding(limit, plan, uses);
  const free = inputs.flatMap((cell): Choice[] => {
    const present = value(cell.name);
    if (cell.kind !== 'choice' || !names.has(cell.name) || plan.locked.has(cell.name)) return [];
    if (typeof present !== 'number' || readingOf(plan, cell.name)?.formula !== undefined) return [];
    const [low, high] = cell.usual ?? [cell.min ?? present, cell.max ?? present];
    const { name, only, type } = cell;
    return [{ name, present, low, high, step: stepOf(cell), counts: type === 'whole', only }];
  });
  return {
    limit,
    choices: free.filter((it) => !BOUNDS.has(it.name)),
    accepted: free.filter((it) => BOUNDS.has(it.name)),
  };
}
