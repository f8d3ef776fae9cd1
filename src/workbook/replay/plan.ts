import { inputNamed } from '../../plan/book.ts';
import { fold } from './fold.ts';
import { guardsOf } from './guards.ts';
import type { GuardedStep, InputKind, Program } from './program.ts';
import type { Scalar } from './scalar.ts';
import type { Step, Steps } from './steps.ts';

const KIND: Readonly<Record<string, InputKind>> = {
  number: 'number',
  whole: 'number',
  flag: 'boolean',
  word: 'text',
};

/** What an input can hold: as the workbook's own says, else what it holds now, else numbers. */
function kindOf(name: string, present: Scalar | undefined): InputKind {
  const type = inputNamed(name)?.type;
  if (type !== undefined) return KIND[type] ?? 'number';
  if (typeof present === 'boolean') return 'boolean';
  return typeof present === 'string' ? 'text' : 'number';
}

/** The steps that the kept slots follow from. */
function needed(steps: readonly Step[], keep: Iterable<number>): Step[] {
  const wanted = new Set(keep);
  const kept = steps.toReversed().filter(({ args, out }) => {
    if (!wanted.has(out)) return false;
    for (const arg of args) wanted.add(arg);
    return true;
  });
  return kept.reverse();
}

/**
 * The least that has to be worked out again at each point for the wanted names when only the varied names change. A
 * varied name that nothing wanted follows from is taken and ignored. Throws when a wanted name was not lowered.
 */
export function plan(steps: Steps, varied: readonly string[], wanted: readonly string[]): Program {
  const slotOf = new Map(steps.cells);
  const given = new Map(steps.given);
  const fresh = varied.filter((name) => !slotOf.has(name));
  const inputSlot = (name: string): number => slotOf.get(name) ?? steps.slots + fresh.indexOf(name);

  const folded = fold(steps, new Set(varied.map(inputSlot)));
  const names = wanted.map((name): [string, number] => {
    const slot = slotOf.get(name);
    if (slot === undefined) throw new Error(`${name} was not lowered, so it cannot be replayed.`);
    return [name, folded.resolve(slot)];
  });
  const kept = needed(
    folded.steps,
    names.map(([, slot]) => slot),
  );

  const used = new Set([...kept.flatMap(({ args }) => args), ...names.map(([, slot]) => slot)]);
  const places = new Map<number, number>();
  const values: [number, Scalar][] = [];
  const placeOf = (slot: number): number => {
    const known = places.get(slot);
    if (known !== undefined) return known;
    const place = places.size;
    places.set(slot, place);
    const value = folded.valueOf(slot);
    if (value !== undefined) values.push([place, value]);
    return place;
  };
  const inputs = varied.map((name) => ({
    name,
    slot: placeOf(inputSlot(name)),
    kind: kindOf(name, given.get(inputSlot(name))),
    present: given.get(inputSlot(name)) ?? null,
    idle: !used.has(inputSlot(name)),
  }));
  const placed = kept.map(({ op, args, out }) => ({ op, args: args.map(placeOf), out: placeOf(out) }));
  const outputs = names.map(([name, slot]): [string, number] => [name, placeOf(slot)]);

  const guards = guardsOf(placed, new Set(outputs.map(([, slot]) => slot)));
  const guarded = placed.map((step): GuardedStep => {
    const guard = guards.get(step.out);
    return guard === undefined ? step : { ...step, guard };
  });
  return { slots: places.size, inputs, given: values, steps: guarded, wanted: outputs };
}
