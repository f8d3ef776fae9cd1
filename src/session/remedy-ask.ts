import { inputs, limitCells, limitNamed } from '../plan/book.ts';
import type { InputName } from '../plan/names.ts';
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
export function deciding(
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

/** Parts that may be ordered or fitted otherwise; nothing else of boat or gear is offered as a change. */
const PARTS: ReadonlySet<string> = new Set<InputName>([
  ...(['bolt_diameter', 'plate_area', 'plate_thickness', 'shim_sleeve'] as const),
  ...(['core_removed', 'stop_collar', 'lanyard'] as const),
]);

/** What may be missing together: one of them alone holds nothing. */
const TOGETHER: readonly [InputName, InputName] = ['stop_collar', 'lanyard'];

/** Whether a remedy may move an input: a choice or a part, neither drilled nor following a formula. */
function mayMove({ name, kind }: InputCell, plan: Plan): boolean {
  if (kind !== 'choice' && !PARTS.has(name)) return false;
  return !plan.locked.has(name) && readingOf(plan, name)?.formula === undefined;
}

/** Every input that a remedy of any limit may move, over its whole range. */
export const mendingRanges = (plan: Plan, value: (name: string) => Value): readonly PointRange[] =>
  inputs.flatMap((cell): PointRange[] => {
    const { name, only, type } = cell;
    const present = value(name);
    if (!mayMove(cell, plan)) return [];
    if (typeof present === 'boolean') return [{ name, values: [false, true] }];
    if (typeof present !== 'number') return [];
    if (only !== undefined) return [{ name, values: [...new Set([...only, present])] }];
    const [low, high] = cell.usual ?? [cell.min ?? present, cell.max ?? present];
    return [{ name, low: Math.min(low, present), high: Math.max(high, present), whole: type === 'whole' }];
  });

/** A part that is not fitted, as something to fit. */
const toFit = (name: string, ...also: readonly string[]): Choice => ({
  name,
  ...(also.length === 0 ? {} : { also }),
  isFlag: true,
  present: 0,
  low: 0,
  high: 1,
  step: 1,
  counts: false,
  only: [1],
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
 * What a search for remedies may move: choices and parts that decide the limit, inside their usual range; what the owner
 * accepts stands apart.
 */
export function remedyAsk({ limit, plan, uses, value, stepOf }: Asked): RemedyAsk {
  const names = deciding(limit, plan, uses);
  const free = inputs.flatMap((cell): Choice[] => {
    const { name, only, type } = cell;
    const present = value(name);
    if (!names.has(name) || !mayMove(cell, plan)) return [];
    if (present === false) return [toFit(name)];
    if (typeof present !== 'number') return [];
    const [low, high] = cell.usual ?? [cell.min ?? present, cell.max ?? present];
    return [{ name, present, low, high, step: stepOf(cell), counts: type === 'whole', only }];
  });
  const missing = TOGETHER.filter((name) => free.some((it) => it.name === name));
  return {
    limit,
    choices: [
      ...free.filter((it) => !BOUNDS.has(it.name)),
      ...(missing.length === TOGETHER.length ? [toFit(...TOGETHER)] : []),
    ],
    accepted: free.filter((it) => BOUNDS.has(it.name)),
  };
}
