import { type Answer, NoAnswer } from '../../../calc/answer.ts';
import { functionNamed } from '../../../calc/catalogue.ts';
import {
  type Argument,
  finished,
  type Given,
  type LibraryFunction,
  refused,
  type Table,
} from '../../../calc/record.ts';
import { type Lane, read } from '../lanes.ts';
import type { Guard } from '../program.ts';
import { given, isGiven } from '../rules/library.ts';
import { type Fault, isTable, noAnswer, type Scalar } from '../scalar.ts';
import { type Columns, INVOKE, type Run } from './invoke.ts';
import { fillUp, type Kernel } from './kernel.ts';

const NOTHING = new Float64Array(0);

/** Why a point has to be answered without running the function; undefined when it can be run. */
type Sieve = (i: number) => Fault | undefined;

interface Bounded {
  readonly numbers: Float64Array;
  readonly above: number;
  readonly least: number;
}

const isBounded = ({ above, least }: Argument): boolean => above !== undefined || least !== undefined;

/** A bound to be looked at; none for a slot that holds the same value for good, within its bounds. */
function boundedOf(argument: Argument | undefined, { numbers, fixed }: Lane): readonly Bounded[] {
  if (argument === undefined || argument.type === 'flag' || !isBounded(argument)) return [];
  const { above = Number.NEGATIVE_INFINITY, least = Number.NEGATIVE_INFINITY } = argument;
  const bounded = { numbers, above, least };
  return fixed !== undefined && isWithin(bounded, 0) ? [] : [bounded];
}

/** What a table argument's slot holds, point by point, and the tables taken out of it for the function. */
interface Tables {
  readonly slot: readonly Scalar[];
  readonly rows: Table[];
}

const tablesOf = ({ any }: Lane): Tables | undefined => any && { slot: any, rows: any.map(() => []) };

/** Takes the tables out; false when a point has none. */
function takeOut({ slot, rows }: Tables, count: number): boolean {
  let all = true;
  for (let i = 0; i < count; i++) {
    const value = slot[i] as Scalar;
    if (isTable(value)) rows[i] = value.rows;
    else all = false;
  }
  return all;
}

const isWithin = ({ numbers, above, least }: Bounded, i: number): boolean => {
  const value = numbers[i] as number;
  return value > above && value >= least;
};

/** Whether all points are within an argument's bounds. */
function within({ numbers, above, least }: Bounded, count: number): boolean {
  // A loop for each bound, because nearly every argument has but one.
  if (above > Number.NEGATIVE_INFINITY) {
    for (let i = 0; i < count; i++) if (!((numbers[i] as number) > above)) return false;
  }
  if (least > Number.NEGATIVE_INFINITY) {
    for (let i = 0; i < count; i++) if (!((numbers[i] as number) >= least)) return false;
  }
  return true;
}

let places = new Int32Array(0);

/** 0, 1, 2... as many as a block has points, or more; the same list for every function. */
function placesUpTo(size: number): Int32Array {
  if (places.length < size) places = Int32Array.from({ length: size }, (_, i) => i);
  return places;
}

/** Whether a condition is as told at all points. */
function isEverywhere(condition: Float64Array, when: boolean, count: number): boolean {
  for (let i = 0; i < count; i++) {
    const value = condition[i] as number;
    if (value !== value || (value !== 0) !== when) return false;
  }
  return true;
}

/** Turns answers into yes/no: 1 where a number is 1, else 0. */
function asFlags(numbers: Float64Array, count: number): void {
  for (let i = 0; i < count; i++) {
    const value = numbers[i] as number;
    if (value === value) numbers[i] = Number(value === 1);
  }
}

function sieveOf(it: LibraryFunction, args: readonly Lane[]): Sieve {
  return (i) => {
    const values: Given[] = [];
    for (const [k, arg] of args.entries()) {
      const value = given(it, k, read(arg, i));
      if (!isGiven(value)) return value;
      values.push(value);
    }
    const why = refused(it, values);
    return why === undefined ? undefined : noAnswer(why.why);
  };
}

/** Hands a yes/no first argument over as such; undefined for a count of arguments no function has. */
function flagFirst(run: (...given: unknown[]) => Answer, count: number): Run | undefined {
  switch (count) {
    case 1:
      return (a) => run(a !== 0);
    case 2:
      return (a, b) => run(a !== 0, b);
    case 3:
      return (a, b, c) => run(a !== 0, b, c);
    case 4:
      return (a, b, c, d) => run(a !== 0, b, c, d);
    case 5:
      return (a, b, c, d, e) => run(a !== 0, b, c, d, e);
    default:
      return undefined;
  }
}

/** The function over bare numbers and tables; undefined for types of arguments that no loop is written for. */
function runOf(it: LibraryFunction, count: number): Run | undefined {
  const types = it.arguments.slice(0, count).map(({ type }) => type ?? 'number');
  const [first, ...rest] = types;
  if (rest.includes('flag')) return undefined;
  return first === 'flag' ? flagFirst(it.run as (...given: unknown[]) => Answer, count) : (it.run as Run);
}

/**
 * A library function called with bare numbers and tables, checked as `call` in calc/record.ts checks them. `guard` is the slot and
 * the answer in it that says at which points the function is looked at. Undefined when the slots need the rule itself.
 */
export function libraryKernel(
  id: string,
  out: Lane,
  args: readonly Lane[],
  guard: { readonly lane: Lane; readonly when: Guard['when'] } | undefined,
): Kernel | undefined {
  const it = functionNamed(id);
  const invoke = INVOKE[args.length];
  if (it === undefined || invoke === undefined) return undefined;
  // A slot that may hold anything serves for a table alone, and a table's argument takes no other.
  if (args.some(({ any }, i) => (any !== undefined) !== (it.arguments[i]?.type === 'table')))
    return undefined;
  const run = runOf(it, args.length);
  if (run === undefined) return undefined;

  const tables = args.map(tablesOf);
  const columns = Array.from(
    { length: INVOKE.length - 1 },
    (_, i) => tables[i]?.rows ?? args[i]?.numbers ?? NOTHING,
  );
  const tabled = tables.filter((it) => it !== undefined);
  const moving = args.filter(({ any, fixed, clean }) => any === undefined && (fixed === undefined || !clean));
  const bounded = args.flatMap((arg, i) => boundedOf(it.arguments[i], arg));
  const sieve = sieveOf(it, args);
  const typed = args.filter(({ any }) => any === undefined).map(({ numbers }) => numbers);
  const slots = args.flatMap(({ any }) => (any === undefined ? [] : [any]));
  const { numbers, faults } = out;
  const everywhere = placesUpTo(numbers.length);
  const some = new Int32Array(numbers.length);
  const asked = guard?.lane.numbers;
  const when = guard?.when ?? true;

  const fail = (i: number, why: Fault): void => {
    numbers[i] = Number.NaN;
    faults[i] = why;
    out.clean = false;
  };
  const put = (i: number, answer: Answer): void => {
    const told = finished(it, answer);
    fail(i, noAnswer(told instanceof NoAnswer ? told.why : ''));
  };
  /** Whether a point can be run; only where it cannot is the reason looked for, which takes longer. */
  const runs = (i: number): boolean => {
    for (const column of typed) if (column[i] !== column[i]) return false;
    for (const bound of bounded) if (!isWithin(bound, i)) return false;
    for (const slot of slots) if (!isTable(slot[i] as Scalar)) return false;
    return true;
  };
  /** Lists the points that are to be run, and answers those that cannot be. */
  const sift = (count: number, plain: boolean): number => {
    let left = 0;
    for (let i = 0; i < count; i++) {
      const condition = asked?.[i];
      if (condition !== undefined && (condition !== condition || (condition !== 0) !== when)) {
        numbers[i] = 0;
        continue;
      }
      const why = plain || runs(i) ? undefined : sieve(i);
      if (why === undefined) some[left++] = i;
      else fail(i, why);
    }
    return left;
  };

  return (count) => {
    out.clean = true;
    let plain = true;
    for (const bound of bounded) plain = plain && within(bound, count);
    for (const arg of moving) plain = plain && arg.clean;
    for (const table of tabled) plain = takeOut(table, count) && plain;
    const isAll = plain && (asked === undefined || isEverywhere(asked, when, count));
    const [at, left] = isAll ? [everywhere, count] : [some, sift(count, plain)];
    invoke(run, columns as unknown as Columns, at, left, numbers, put);
    if (it.flag) asFlags(numbers, count);
    fillUp(out, count);
  };
}
