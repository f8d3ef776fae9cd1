import { type Ask, type Entry, refused } from './entry.ts';
import { parseFlag } from './parse-flag.ts';
import { parseNumber } from './parse-number.ts';
import { parseWord } from './parse-word.ts';
import { quoted } from './quoted.ts';

/** More than any reading needs; it keeps every refusal as quick as an answer. */
export const LONGEST_ENTRY = 200;

/**
 * Reads exactly what a person typed for one input. Values come back in the input's base unit; an empty text is an
 * answer of its own. Formulas (a leading =) belong to the caller and are refused here. Never throws.
 */
export const parseEntry = (text: string, ask: Ask): Entry => {
  const typed = text.trim();
  if (typed === '') return { ok: true, empty: true, typed };
  if (typed.length > LONGEST_ENTRY) {
    return refused(
      `The text for ${ask.name} is ${typed.length} characters long: write at most ${LONGEST_ENTRY}. It begins with ${quoted(typed.slice(0, LONGEST_ENTRY))}`,
    );
  }
  if (typed.startsWith('=')) {
    return refused(`${quoted(typed)} is a formula. For ${ask.name}, write a plain value here.`);
  }
  if (ask.kind === 'flag') return parseFlag(typed, ask);
  if (ask.kind === 'word') return parseWord(typed, ask);
  return parseNumber(typed, ask);
};
