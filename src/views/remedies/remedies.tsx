import { useMemo, useState } from 'react';
import { inputNamed } from '../../plan/book.ts';
import type { Plan } from '../../plan/plan.ts';
import { studyWords } from '../../session/study-words.ts';
import { tryValues } from '../../session/try-values.ts';
import type { Remedies as Found, Remedy } from '../../studies/remedies.ts';
import {
  costSentences,
  mendsSentence,
  remediesSentence,
  remedySentence,
  warningSentences,
} from '../../studies/remedy-words.ts';
import type { Words } from '../../studies/words.ts';
import { Action } from '../parts/action.tsx';
import { glide } from '../parts/glide.ts';
import { useLimit, usePlan, useSession } from '../use-session.ts';
import { MountInstead } from './mount-instead.tsx';
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

  const attempt = ({ inputs, first }: Remedy): void => {
    glide();
    const [one, ...others] = first.sets;
    const done =
      one !== undefined && others.length === 0
        ? session.choose(one.input, one.value)
        : tryValues(
            session,
            new Map(first.sets.map((it) => [it.input, it.value])),
            `${namesOf(inputs)} tried`,
          );
    setTold(done.ok ? undefined : done.why);
    setTried(done.ok ? session.plan : undefined);
  };
  const takeMount = (values: ReadonlyMap<string, number>): void => {
    glide();
    const done = tryValues(session, values, 'A proposal tried');
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
  const before = value && remediesSentence(value);
  return (
    <div className="remedies" data-view="remedies" aria-busy={stale}>
      {undo}
      {told !== undefined && <p role="alert">{told}</p>}
      {why !== undefined ? (
        <p>What would fix it could not be worked out: {why}</p>
      ) : value === undefined ? (
        <p className="base-soft">
          {progress === undefined
            ? 'Working out what would fix it.'
            : `Working out what would fix it: ${progress.done} of about ${progress.of}.`}
        </p>
      ) : (
        <>
          {before !== undefined && <p>{before}</p>}
          <ul className="remedies-list">
            {value.remedies.map((remedy) => (
              <Row
                key={remedy.inputs.join()}
                remedy={remedy}
                found={value}
                words={words}
                stale={stale}
                onTry={attempt}
              />
            ))}
          </ul>
          {!isFixed(value) && <MountInstead words={words} onUse={takeMount} />}
        </>
      )}
    </div>
  );
}

/** Whether a change of the mount or a part fixes it, without leaving more limits outside than now. */
const isFixed = ({ by, remedies, failing }: Found): boolean =>
  by === 'change' && remedies.some((it) => it.first.failing <= failing);

const namesOf = (inputs: readonly string[]): string =>
  inputs.map((it) => inputNamed(it)?.label ?? it).join('; ');

/** Whether the gear's maker has a say in it. */
const isOfTheGear = (input: string): boolean => inputNamed(input)?.where === 'manual';

interface RowProps {
  readonly remedy: Remedy;
  readonly found: Found;
  readonly words: Words;
  readonly stale: boolean;
  readonly onTry: (remedy: Remedy) => void;
}

function Row({ remedy, found, words, stale, onTry }: RowProps) {
  const { first, inputs } = remedy;
  const says = [...costSentences(first, words), mendsSentence(first, words)];
  return (
    <li className="remedy">
      <div>
        {warningSentences(first, found, words).map((it) => (
          <p key={it}>{it}</p>
        ))}
        <p className="remedy-gives">{remedySentence(remedy, found, words)}</p>
        {says.map((it) => it !== undefined && <p key={it}>{it}</p>)}
        {inputs.some(isOfTheGear) && (
          <p>That takes another part: see the gear’s manual before you order it.</p>
        )}
      </div>
      <Action disabled={stale} says={`Try it: ${namesOf(inputs)}`} onPress={() => onTry(remedy)}>
        Try it
      </Action>
    </li>
  );
}
