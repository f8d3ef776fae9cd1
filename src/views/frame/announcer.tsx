import { useEffect, useState } from 'react';
import type { Session } from '../../session/session.ts';
import { useSession } from '../use-session.ts';
import { leadOf } from './lead.ts';

/** Milliseconds without an edit before anything is read out, so that a run of steps is one message. */
const PAUSE = 900;

const wordsOf = (session: Session): string => {
  const lead = leadOf(session.judgement, session.plan.units);
  return lead === undefined ? '' : `${lead.says} ${lead.more}`.trim();
};

/** Reads out, politely and once edits pause, where the mount now stands. */
export function Announcer() {
  const session = useSession();
  const [words, setWords] = useState('');
  useEffect(() => {
    let timer: ReturnType<typeof setTimeout> | undefined;
    let last = '';
    let plan = session.plan;
    const stop = session.subscribe(() => {
      if (!session.ready) return;
      // What is there at the start is read as part of the page.
      if (last === '' && session.plan === plan) last = wordsOf(session);
      if (session.plan === plan) return;
      plan = session.plan;
      clearTimeout(timer);
      timer = setTimeout(() => {
        const next = wordsOf(session);
        if (next === last) return;
        last = next;
        setWords(next);
      }, PAUSE);
    });
    return () => {
      stop();
      clearTimeout(timer);
    };
  }, [session]);
  return (
    <p className="base-spoken" role="status" aria-live="polite">
      {words}
    </p>
  );
}
