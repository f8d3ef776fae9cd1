import { STANDARD_TAKES, type Takes } from '../plan/standard-words.ts';
import type { Token } from './token.ts';

interface Open {
  readonly word: string | undefined;
  values: number;
}

const counted = (n: number): string => (n === 0 ? 'none' : String(n));

function allowed([fewest, most]: Takes): string {
  if (most === 0) return 'no value';
  if (most === Number.POSITIVE_INFINITY) return 'at least 1 value';
  if (fewest === most) return fewest === 1 ? '1 value' : `${fewest} values`;
  return `${fewest} or ${most} values`;
}

/**
 * Why a function of the standard is called with more or fewer values than it takes, as one sentence. The library's own
 * functions say so themselves, by the names of their arguments.
 */
export function countRefusal(tokens: readonly Token[]): string | undefined {
  const open: Open[] = [];
  for (const [i, { text }] of tokens.entries()) {
    const before = tokens[i - 1];
    if (text === '(') {
      const word = before?.kind === 'call' ? before.text.toUpperCase() : undefined;
      open.push({ word, values: tokens[i + 1]?.text === ')' ? 0 : 1 });
    } else if (text === ';' || text === ',') {
      const inside = open.at(-1);
      if (inside !== undefined) inside.values++;
    } else if (text === ')') {
      const closed = open.pop();
      const takes = closed?.word === undefined ? undefined : STANDARD_TAKES[closed.word];
      if (closed === undefined || takes === undefined) continue;
      if (closed.values >= takes[0] && closed.values <= takes[1]) continue;
      return `${closed.word} takes ${allowed(takes)} in its brackets; here it has ${counted(closed.values)}.`;
    }
  }
  return undefined;
}
