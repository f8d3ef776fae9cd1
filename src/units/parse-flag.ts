import { type Ask, type Entry, read, refused } from './entry.ts';
import { folded } from './folded.ts';
import { quoted } from './quoted.ts';

const FLAGS: ReadonlyMap<string, boolean> = new Map([
  ['true', true],
  ['yes', true],
  ['on', true],
  ['false', false],
  ['no', false],
  ['off', false],
]);

/** Reads yes, no, on, off, TRUE or FALSE in any case. */
export const parseFlag = (typed: string, ask: Ask): Entry => {
  const flag = FLAGS.get(folded(typed));
  if (flag !== undefined) return read(flag, '', typed);
  return refused(`${quoted(typed)} is neither yes nor no. For ${ask.name}, write yes or no.`);
};
