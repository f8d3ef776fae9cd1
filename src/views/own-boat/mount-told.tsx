import { inputNamed } from '../../plan/book.ts';
import { BOUNDS } from '../../session/remedy-ask.ts';
import { studyWords } from '../../session/study-words.ts';
import type { Conflict, Freeing } from '../../studies/first-mount/ask.ts';
import {
  conflictSentence,
  freeingWords,
  mountSentence,
  standingSentence,
} from '../../studies/first-mount/words.ts';
import { cellHref } from '../parts/cell-href.ts';
import { usePlan } from '../use-session.ts';
import type { Made } from './making-mount.tsx';

/** Whose a value is to change. */
function whose({ name }: Freeing): string {
  const cell = inputNamed(name);
  if (cell?.kind === 'choice') return 'Yours to accept, unless the gear’s manual asks for more.';
  if (BOUNDS.has(name)) return 'Only the gear’s maker can say whether that may be.';
  return 'That takes another part: ask the gear’s maker.';
}

/** What conflicts, and the single changes that would free it. */
function ConflictTold({ conflict, made }: { readonly conflict: Conflict; readonly made: Made }) {
  const words = studyWords(usePlan());
  const { frees } = conflict;
  if (made.found === undefined) return null;
  return (
    <div data-conflict={conflict.limits.join(' ')}>
      <p>{conflictSentence(conflict, made.found, words)}</p>
      {frees.length === 0 ? (
        <p className="type-small">
          No single bound or part of the gear, changed within its usual range, would free it.
        </p>
      ) : (
        <>
          <p className="type-small">Any one of these would free it:</p>
          <ul className="own-boat-frees type-small">
            {frees.map((it) => (
              <li key={it.name}>
                <a href={cellHref(it.name)}>{freeingWords(it, words)}</a>. {whose(it)}
              </li>
            ))}
          </ul>
        </>
      )}
    </div>
  );
}

/** The mount that the plan was opened with, how it stands to the limits, and what stands in the way of a better one. */
export function MountTold({ made }: { readonly made: Made }) {
  const words = studyWords(usePlan());
  const { values, found, why } = made;
  return (
    <div
      className="own-boat-mount"
      data-mount={found === undefined ? 'unjudged' : found.mount.failing.length}
    >
      <p>{mountSentence({ values, failing: [] }, words)}</p>
      <p>
        {found === undefined
          ? `It follows the readings by a simple rule, and no better one was looked for${
              why === undefined ? '' : `: ${why}`
            }`
          : standingSentence(found, words)}
      </p>
      {found?.conflicts.map((it) => (
        <ConflictTold key={it.limits.join(' ')} conflict={it} made={made} />
      ))}
    </div>
  );
}
