import { type Ask, type Entry, read, refused } from './entry.ts';
import { listed } from './entry-sentences.ts';
import { folded } from './folded.ts';
import { quoted } from './quoted.ts';

/** Reads one of the words the input lists, in any case, and gives it back as listed. */
export const parseWord = (typed: string, ask: Ask): Entry => {
  const words = ask.words ?? [];
  const word = words.find((one) => folded(one) === folded(typed));
  if (word !== undefined) return read(word, '', typed);
  if (words.length === 0)
    return refused(`${quoted(typed)} cannot be taken: no words are listed for ${ask.name}.`);
  return refused(`${quoted(typed)} is not among the words for ${ask.name}. Write ${listed(words)}.`);
};
