import { NoAnswer } from '../../../calc/answer.ts';
import { catalogue, tableFunctions } from '../../../calc/catalogue.ts';
import {
  call,
  type Given,
  type LibraryFunction,
  type Table,
  type TableFunction,
} from '../../../calc/record.ts';
import {
  type Called,
  countSentence,
  emptySentence,
  fitted,
  rangeSentence,
  UNTOLD_SENTENCE,
  wordSentence,
} from '../../library-arguments.ts';
import { NO_ANSWER } from '../../no-answer.ts';
import type { Rule } from '../rule.ts';
import { type Fault, isFault, isTable, NO_ROWS, noAnswer, type Scalar } from '../scalar.ts';

/** One argument as the library takes it, or the error to hand on. */
export function given(it: Called, i: number, value: Scalar): Given | Fault {
  if (value === null) return noAnswer(emptySentence(it, i));
  if (typeof value === 'string') return noAnswer(wordSentence(it, i, value));
  if (isFault(value)) return value;
  if (isTable(value)) return it.arguments[i]?.type === 'table' ? value.rows : noAnswer(rangeSentence(it, i));
  const fit = fitted(it, i, value);
  return 'why' in fit ? noAnswer(fit.why) : fit.given;
}

/** A table, as the function that gives it does; the others are not looked at when the first says that it is not wanted. */
function callTable(it: TableFunction, args: readonly Scalar[]): Scalar {
  const values: Given[] = [];
  for (let i = 0; i < args.length; i++) {
    const value = given(it, i, args[i] ?? null);
    if (!isGiven(value)) return value;
    if (i === 0 && value === false) return NO_ROWS;
    values.push(value);
  }
  return { rows: (it.run as (...given: readonly Given[]) => Table)(...values) };
}

export const isGiven = (value: Given | Fault): value is Given =>
  typeof value !== 'object' || !('fault' in value);

/** A library function on any values, as the engine calls it. */
export function callLibrary(it: LibraryFunction, args: readonly Scalar[]): Scalar {
  const values: Given[] = [];
  for (let i = 0; i < args.length; i++) {
    const value = given(it, i, args[i] ?? null);
    if (!isGiven(value)) return value;
    values.push(value);
  }
  const answer = call(it, values);
  if (answer instanceof NoAnswer) return noAnswer(answer.why);
  return it.flag ? answer === 1 : answer;
}

/** Why a function cannot take so many arguments, as the error its cell shows. */
export function miscounted(it: Called, count: number): Fault | undefined {
  const why = countSentence(it, count);
  return why === undefined ? undefined : noAnswer(why);
}

const MANY = Number.POSITIVE_INFINITY;

/** The library's own functions, and the one that only gives a reason. */
export const library: Readonly<Record<string, Rule>> = {
  ...Object.fromEntries(
    catalogue.map((it): [string, Rule] => [
      it.id,
      {
        least: 0,
        most: MANY,
        kind: it.flag ? 'boolean' : 'number',
        run: (args) => callLibrary(it, args),
      },
    ]),
  ),
  ...Object.fromEntries(
    tableFunctions.map((it): [string, Rule] => [
      it.id,
      { least: 0, most: MANY, kind: 'mixed', run: (args) => callTable(it, args) },
    ]),
  ),
  [NO_ANSWER]: {
    least: 1,
    most: MANY,
    kind: 'fault',
    run: ([why]) => noAnswer(typeof why === 'string' ? why : UNTOLD_SENTENCE),
  },
};
