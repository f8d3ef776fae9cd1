import { useEffect, useState } from 'react';
import type { Session } from '../../session/session.ts';
import { spokenChanges } from '../../session/spoken-changes.ts';
import { useSession } from '../use-session.ts';
import { leadOf } from './lead.ts';

/** Milliseconds without an edit before anything is read out, so that a run of steps is one message. */
const PAUSE = 900;

/** Told apart from the same words before, which would not be read out again. */
const AGAIN = '\u00A0';

const wordsOf = (session: Session): string => {
  const lead = leadOf(session.judgement, session.plan.units);
  return lead === undefined ? '' : `${lead.says} ${lead.more}`.trim();
};

/** Reads out, politely and once edits pause, what they did that was not said as it was pressed, and where the mount now stands. */
export function Announcer() {
  const session = useSession();
  const [words, setWords] = useState('');
  useEffect(() => {
    let timer: ReturnType<typeof setTimeout> | undefined;
    let last = '';
    let { plan, opened } = session;
    /** The plan as it was when anything was last read out. */
    let told = plan;
    const tell = (): void => {
      const changes = spokenChanges(told, session.plan);
      told = session.plan;
      const lead = wordsOf(session);
      const now = [...changes, ...(lead === last ? [] : [lead])].join(' ');
      last = lead;
      if (now !== '') setWords((before) => (before === now ? `${now}${AGAIN}` : now));
    };
    const stop = session.subscribe(() => {
      if (!session.ready) return;
      // What is there at the start is read as part of the page.
      if (last === '' && session.plan === plan) last = wordsOf(session);
      if (session.opened !== opened) {
        opened = session.opened;
        told = session.plan;
      }
      if (session.plan === plan) return;
      plan = session.plan;
      clearTimeout(timer);
      timer = setTimeout(tell, PAUSE);
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
