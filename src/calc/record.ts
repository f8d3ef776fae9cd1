import { type Answer, NoAnswer } from './answer.ts';

/** Units of the model; '–' stands for ratios, counts, flags and words. */
export type Unit = 'mm' | 'deg' | 'kn' | 'N' | 'N·m' | 'MPa' | 'mm²' | 'cm³' | 'kg' | 'kg/m³' | '–';

/** A measured table: rows of numbers, read row by row. */
export type Table = readonly (readonly number[])[];

export type Given = number | boolean | Table;

export interface Argument {
  readonly name: string;
  readonly unit: Unit;
  readonly meaning: string;
  /** `number` when absent. */
  readonly type?: 'number' | 'flag' | 'table';
  /** The value must be greater than this. */
  readonly above?: number;
  /** The value must not be less than this. */
  readonly least?: number;
  /** Taken when the argument is left out; only trailing arguments may have one. */
  readonly default?: Given;
}

export interface Example {
  readonly given: readonly Given[];
  readonly answer: number;
  /** Absolute, in the result's unit. */
  readonly tolerance: number;
  /** Where the figure comes from: a standard, a handbook table, or hand arithmetic. */
  readonly source: string;
}

/** One library function as data: engine, help, reference page and tests are all made from it. */
export interface LibraryFunction {
  readonly id: string;
  readonly title: string;
  readonly arguments: readonly Argument[];
  /** Unit of the result; a yes/no result is 1 or 0. */
  readonly unit: Unit;
  /** TRUE/FALSE rather than a number. */
  readonly flag?: true;
  readonly formula: string;
  readonly source: string;
  readonly example: Example;
  readonly run: (...given: never[]) => Answer;
}

/** A function that gives a table, which only another function's table argument can take. */
export interface TableFunction {
  readonly id: string;
  readonly title: string;
  readonly arguments: readonly Argument[];
  readonly formula: string;
  readonly source: string;
  readonly run: (...given: never[]) => Table;
}

/** Keeps the record's literal types while checking its shape. */
export const record = <T extends LibraryFunction>(it: T): T => it;

const outside = (argument: Argument, value: number): string | undefined => {
  if (argument.above !== undefined && !(value > argument.above)) return `above ${argument.above}`;
  if (argument.least !== undefined && !(value >= argument.least)) return `${argument.least} or more`;
  return undefined;
};

/** Why a record cannot be run on positional values, when one is past its argument's bounds. */
export function refused(it: LibraryFunction, given: readonly Given[]): NoAnswer | undefined {
  for (let i = 0; i < given.length; i++) {
    const argument = it.arguments[i];
    const value = given[i];
    if (argument === undefined || typeof value !== 'number') continue;
    if (argument.above === undefined && argument.least === undefined) continue;
    const allowed = outside(argument, value);
    if (allowed !== undefined) {
      return new NoAnswer(`${argument.meaning} is ${value}; ${it.id} needs ${allowed}.`);
    }
  }
  return undefined;
}

/** What a record's run came to; a number that overflowed becomes a reason. */
export function finished(it: LibraryFunction, answer: Answer): Answer {
  if (typeof answer !== 'number') return answer;
  if (!Number.isFinite(answer)) return new NoAnswer(`${it.title}: these numbers give no finite value.`);
  // A negative zero would print as a sign without a size.
  return answer === 0 ? 0 : answer;
}

/** Runs a record on positional values; argument bounds and results that overflow become reasons. */
export const call = (it: LibraryFunction, given: readonly Given[]): Answer =>
  refused(it, given) ?? finished(it, (it.run as (...values: readonly Given[]) => Answer)(...given));
