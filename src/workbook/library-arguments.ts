import type { Given, LibraryFunction } from '../calc/record.ts';

/** What is called: a function of the library, or one that gives a table. */
export type Called = Pick<LibraryFunction, 'id' | 'arguments'>;

const meaningOf = (it: Called, i: number): string => it.arguments[i]?.meaning ?? `Argument ${i + 1}`;

/** Why a library function cannot be called with this many arguments; undefined when it can. */
export function countSentence(it: Called, count: number): string | undefined {
  const needed = it.arguments.filter((argument) => !('default' in argument)).length;
  if (count >= needed && count <= it.arguments.length) return undefined;
  return `${it.id} takes ${it.arguments.length} values (${it.arguments.map((a) => a.name).join('; ')}); ${count} were given.`;
}

/** What is said of an argument that is a range where one value is needed. */
export const rangeSentence = (it: Called, i: number): string =>
  `${meaningOf(it, i)} is a range; ${it.id} needs one value.`;

/** What is said of an argument that is one value where a table is needed. */
const tableSentence = (it: Called, i: number): string =>
  `${meaningOf(it, i)} is one value; ${it.id} needs a table.`;

/**
 * A number or a yes/no as the argument's type has it, or why it cannot be: OpenFormula takes yes for 1 and no for 0, and
 * every number but 0 for yes.
 */
export function fitted(
  it: Called,
  i: number,
  value: number | boolean,
): { readonly given: Given } | { readonly why: string } {
  const type = it.arguments[i]?.type;
  if (type === 'table') return { why: tableSentence(it, i) };
  return { given: type === 'flag' ? value !== 0 && value !== false : Number(value) };
}

/** What is said of an argument that is empty. */
export const emptySentence = (it: Called, i: number): string => `${meaningOf(it, i)} is empty.`;

/** What is said of an argument that is a word. */
export const wordSentence = (it: Called, i: number, word: string): string =>
  `${meaningOf(it, i)} is the word “${word}”; ${it.id} needs a number.`;

/** What a cell says that was told to have no answer without being told why. */
export const UNTOLD_SENTENCE = 'It has no answer.';
