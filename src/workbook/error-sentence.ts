const MEANING: Readonly<Record<string, string>> = {
  DIV_BY_ZERO: 'Something is divided by 0.',
  CYCLE: 'The cell follows from itself.',
  NAME: 'A name in the formula is not known.',
  VALUE: 'A word or a list stands where one number is needed.',
  NUM: 'These numbers give no finite value.',
  NA: 'Something it needs has no answer.',
  REF: 'A cell it needs is gone.',
  ERROR: 'The formula cannot be read.',
};

/** Why a cell has no value, from the engine's error kind and message. */
export function errorSentence(kind: string, message: string): string {
  // The engine's own messages are for programmers; only the library's sentences end with a full stop.
  if (kind === 'NA' && message.endsWith('.')) return message;
  return MEANING[kind] ?? kind;
}

/** Why an empty cell has no value. */
export const EMPTY_SENTENCE = 'The cell is empty.';
