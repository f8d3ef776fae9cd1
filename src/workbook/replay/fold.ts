import { functionNamed, tableFunctions } from '../../calc/catalogue.ts';
import { toBoolean } from './coerce.ts';
import { applied } from './rules.ts';
import { isFault, isTable, NO_ROWS, type Scalar } from './scalar.ts';
import type { Step, Steps } from './steps.ts';

/** Steps with everything fixed worked out: each slot has a value, is varied, or is written by a step. */
export interface Folded {
  /** The slot that stands for a slot. */
  resolve(slot: number): number;
  valueOf(slot: number): Scalar | undefined;
  readonly steps: readonly Step[];
}

/** What an IF or IFERROR whose first part is fixed comes to: one of its slots, or a value. */
function chosen(op: string, args: readonly number[], first: Scalar): { slot: number } | { value: Scalar } {
  const [at = 0, then = 0, otherwise] = args;
  if (op === 'IFERROR') return { slot: isFault(first) ? then : at };
  const taken = toBoolean(first);
  if (isFault(taken)) return { value: taken };
  if (taken) return { slot: then };
  return otherwise === undefined ? { value: false } : { slot: otherwise };
}

const isTableFunction = (op: string): boolean => tableFunctions.some((it) => it.id === op);

/** An empty table in place of an argument that is empty when left out is left out, so that the loops take the call. */
function without(op: string, args: readonly number[], last: Scalar | undefined): readonly number[] {
  if (last === undefined || !isTable(last) || last.rows.length > 0) return args;
  const argument = functionNamed(op)?.arguments[args.length - 1];
  return argument !== undefined && 'default' in argument ? args.slice(0, -1) : args;
}

const keyOf = (value: Scalar): string => `${typeof value} ${JSON.stringify(value)}`;

/** Works out what the varied slots do not reach, and joins steps that do the same. */
export function fold({ given, steps }: Steps, varied: ReadonlySet<number>): Folded {
  const values = new Map<number, Scalar>();
  const standsFor = new Map<number, number>();
  const slotOfValue = new Map<string, number>();
  const slotOfStep = new Map<string, number>();
  const left: Step[] = [];
  const resolve = (slot: number): number => standsFor.get(slot) ?? slot;

  const fix = (slot: number, value: Scalar): void => {
    const key = keyOf(value);
    const known = slotOfValue.get(key);
    if (known !== undefined) {
      standsFor.set(slot, known);
      return;
    }
    slotOfValue.set(key, slot);
    values.set(slot, value);
  };

  const take = ({ op, args: raw, out }: Step): void => {
    const all = raw.map(resolve);
    const args = without(op, all, values.get(all.at(-1) ?? -1));
    const known = args.map((slot) => values.get(slot));
    if (op === 'same') {
      standsFor.set(out, args[0] as number);
      return;
    }
    if (known.every((value) => value !== undefined)) {
      fix(out, applied(op, known));
      return;
    }
    const first = known[0];
    if (first === false && isTableFunction(op)) {
      fix(out, NO_ROWS);
      return;
    }
    if (first !== undefined && (op === 'IF' || op === 'IFERROR')) {
      const taken = chosen(op, args, first);
      if ('slot' in taken) standsFor.set(out, taken.slot);
      else fix(out, taken.value);
      return;
    }
    const key = `${op} ${args.join(' ')}`;
    const twin = slotOfStep.get(key);
    if (twin !== undefined) standsFor.set(out, twin);
    else {
      slotOfStep.set(key, out);
      left.push({ op, args, out });
    }
  };

  for (const [slot, value] of given) if (!varied.has(slot)) fix(slot, value);
  for (const step of steps) if (!varied.has(step.out)) take(step);
  return { resolve, valueOf: (slot) => values.get(slot), steps: left };
}
