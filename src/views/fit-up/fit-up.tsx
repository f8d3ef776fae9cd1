import { useCallback, useEffect, useRef, useState } from 'react';
import { BeforeYouStart } from './before-you-start.tsx';
import { FittedPage } from './fitted-page.tsx';
import './fit-up.css';
import { HandoverRecord } from './handover-record.tsx';
import { SayContext } from './say.ts';
import { StopList } from './stop-list.tsx';
import { WorkSteps } from './work-steps.tsx';

const PARTS = [
  { part: 'work', word: 'Order of work', View: WorkSteps },
  { part: 'before', word: 'Before you start', View: BeforeYouStart },
  { part: 'stops', word: 'Stop points', View: StopList },
  { part: 'fitted', word: 'As fitted', View: FittedPage },
  { part: 'handover', word: 'Handover record', View: HandoverRecord },
] as const;

/** The day of the work: a line of words, and the part whose word is chosen. */
export function FitUp({ asked }: { readonly asked?: string | undefined }) {
  const { part, word, View } = PARTS.find((it) => it.part === asked) ?? PARTS[0];
  const title = useRef<HTMLHeadingElement>(null);
  const [said, setSaid] = useState({ words: '', times: 0 });
  const say = useCallback((words: string) => setSaid(({ times }) => ({ words, times: times + 1 })), []);
  // On a phone the stop points are one screenful, once the names above them are out of the way.
  useEffect(() => {
    if (part === 'stops') title.current?.scrollIntoView({ block: 'start' });
  }, [part]);
  return (
    <SayContext value={say}>
      <div className="fit-up" data-view="fit-up" data-part={part}>
        <nav className="fit-up-names" aria-label="Fit-up">
          {PARTS.map((it) => (
            <a
              key={it.part}
              className="names-link type-label"
              href={`#/fit-up/${it.part}`}
              aria-current={it.part === part ? 'page' : undefined}
            >
              {it.word}
            </a>
          ))}
        </nav>
        <h2 ref={title} className="type-page">
          {word}
        </h2>
        <View />
        <p className="base-spoken fit-up-said" role="status" aria-live="polite">
          {/* The same words twice are two messages. */}
          <span key={said.times}>{said.words}</span>
        </p>
      </div>
    </SayContext>
  );
}
