import { useMemo, useState } from 'react';
import { inputNamed } from '../../plan/book.ts';
import type { Plan } from '../../plan/plan.ts';
import { studyWords } from '../../session/study-words.ts';
import type { Remedy } from '../../studies/remedies.ts';
import { mendsSentence, remedySentence, worseSentences } from '../../studies/remedy-words.ts';
import type { Words } from '../../studies/words.ts';
import { Action } from '../parts/action.tsx';
import { glide } from '../parts/glide.ts';
import { useLimit, usePlan, useSession } from '../use-session.ts';
import { RemedyRoom } from './remedy-room.tsx';
import { useRemedies, useRemedySentence } from './use-remedies.ts';
import './remedies.css';

/** The best remedy as a sentence for the lead; room for it while it is being worked out. */
export function RemedySentence({ limit }: { readonly limit: string }) {
  return useRemedySentence(limit) ?? <RemedyRoom />;
}

/** What would mend a limit that is outside or near: each choice that does, what it makes worse, and a try. */
export function Remedies({ limit }: { readonly limit: string }) {
  const session = useSession();
  const plan = usePlan();
  const state = useLimit(limit)?.verdict.state;
  const words = useMemo(() => studyWords(plan), [plan]);
  const { value, stale, why, progress } = useRemedies(limit);
  const [told, setTold] = useState<string>();
  const [tried, setTried] = useState<Plan>();

  const attempt = ({ choice, first }: Remedy): void => {
    glide();
    const done = session.choose(choice, first.value);
    setTold(done.ok ? undefined : done.why);
    setTried(done.ok ? session.plan : undefined);
  };
  const undo = tried === plan && (
    <p className="remedies-tried">
      Tried.{' '}
      <Action icon="undo" says="Undo the remedy tried" onPress={() => session.undo()}>
        Undo
      </Action>
    </p>
  );
  if (state !== 'outside' && state !== 'near') return undo || null;
  return (
    <div className="remedies" data-view="remedies" aria-busy={stale}>
      {undo}
      {told !== undefined && <p role="alert">{told}</p>}
      {why !== undefined ? (
        <p>What would mend it could not be worked out: {why}</p>
      ) : value === undefined ? (
        <p className="base-soft">
          {progress === undefined
            ? 'Working out what would mend it.'
            : `Working out what would mend it: ${progress.done} of about ${progress.of}.`}
        </p>
      ) : (
        <>
          {value.remedies.length === 0 && (
            <p>
              No single choice mends it inside its usual range. Look at the readings and bounds it rests on.
            </p>
          )}
          {value.accepting && <p>No choice of the mount mends it by itself; only what you accept would.</p>}
          <ul className="remedies-list">
            {value.remedies.map((remedy) => (
              <Row
                key={remedy.choice}
                remedy={remedy}
                accepting={value.accepting}
                words={words}
                stale={stale}
                onTry={attempt}
              />
            ))}
          </ul>
        </>
      )}
    </div>
  );
}

interface RowProps {
  readonly remedy: Remedy;
  readonly accepting: boolean;
  readonly words: Words;
  readonly stale: boolean;
  readonly onTry: (remedy: Remedy) => void;
}

function Row({ remedy, accepting, words, stale, onTry }: RowProps) {
  const says = [...worseSentences(remedy.first, words), mendsSentence(remedy.first, words)];
  return (
    <li className="remedy">
      <div>
        <p className="remedy-gives">{remedySentence(remedy, accepting, words)}</p>
        {says.map((it) => it !== undefined && <p key={it}>{it}</p>)}
      </div>
      <Action
        disabled={stale}
        says={`Try it: ${inputNamed(remedy.choice)?.label ?? remedy.choice}`}
        onPress={() => onTry(remedy)}
      >
        Try it
      </Action>
    </li>
  );
}
