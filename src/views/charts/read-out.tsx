import { useCallback } from 'react';
import type { Plan } from '../../plan/plan.ts';
import type { Session } from '../../session/session.ts';
import type { Words } from '../../studies/words.ts';
import { Action } from '../parts/action.tsx';
import { useLook, useSession } from '../use-session.ts';
import { type Reading, readWords } from './read-words.ts';

interface Props {
  readonly reading: Reading;
  readonly words: Words;
  /** The value pointed at; the present one when none is. */
  readonly cursor: number | undefined;
  /** Why the last try was refused. */
  readonly why: string | undefined;
  /** The plan as the last try left it. */
  readonly tried: Plan | undefined;
}

/** What the chart says at one value, in a line of text under it. */
export function ReadOut({ reading, words, cursor, why, tried }: Props) {
  const session = useSession();
  const { input } = reading;
  const present = useLook(useCallback((it: Session) => it.value(input), [input]));
  const isTried = useLook(useCallback((it: Session) => tried !== undefined && it.plan === tried, [tried]));
  const at = cursor ?? (typeof present === 'number' ? present : undefined);
  return (
    <p className="sweep-read type-small">
      {at !== undefined && readWords(reading, at, words)} {why}
      {isTried && cursor === undefined && (
        <Action icon="undo" says="Undo the value tried on the chart" onPress={() => session.undo()}>
          Undo
        </Action>
      )}
    </p>
  );
}
