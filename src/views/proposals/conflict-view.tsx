import { inputNamed } from '../../plan/book.ts';
import { BOUNDS } from '../../session/remedy-ask.ts';
import type { Conflict, Loosening } from '../../studies/proposals/ask.ts';
import {
  conflictSentence,
  failingWords,
  looseningSentence,
  nearestWords,
} from '../../studies/proposals/proposal-words.ts';
import type { Words } from '../../studies/words.ts';
import { cellHref } from '../parts/cell-href.ts';

/** Whose a value is to change. */
function whose({ name }: Loosening): string {
  const cell = inputNamed(name);
  if (cell?.kind === 'choice') return 'That is yours to accept, unless the gear’s manual asks for more.';
  if (BOUNDS.has(name)) return 'Only the gear’s maker can say whether that is allowed.';
  return 'That takes another part; ask the gear’s maker before you count on it.';
}

interface Props {
  readonly conflict: Conflict;
  readonly changes: (mount: Conflict['nearest']) => string;
  readonly words: Words;
}

/** Why nothing holds, and the least single changes that would free it. */
export function ConflictView({ conflict, changes, words }: Props) {
  const { nearest, loosenings } = conflict;
  return (
    <div>
      <p>{conflictSentence(conflict, words)}</p>
      <p className="type-small">
        Nearest: {changes(nearest)}. Not met there: {failingWords(nearest, words)};{' '}
        {nearestWords(nearest, words)}.
      </p>
      {loosenings.length === 0 ? (
        <p className="type-small">
          No single bound or gear value, changed within its usual range, makes all limits possible.
        </p>
      ) : (
        <ul>
          {loosenings.map((it) => (
            <li key={it.name} className="proposal">
              <span />
              <div>
                <p className="proposal-changes">{looseningSentence(it, words)}</p>
                <p className="type-small">
                  {changes(it.mount)}. {whose(it)}
                </p>
              </div>
              <a href={cellHref(it.name)}>Look at it</a>
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}
