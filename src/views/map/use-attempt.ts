import { useCallback, useState } from 'react';
import type { Plan } from '../../plan/plan.ts';
import type { Session } from '../../session/session.ts';
import { tryValues } from '../../session/try-values.ts';
import { glide } from '../parts/glide.ts';
import { useLook, useSession } from '../use-session.ts';
import type { MapChoice, Spot } from './map-ask.ts';

export interface Attempt {
  readonly attempt: (spot: Spot) => void;
  /** Why the last spot tried was not put in. */
  readonly why: string | undefined;
  readonly clear: () => void;
  /** Whether the plan stands as the last try left it. */
  readonly isTried: boolean;
}

/**
 * Puts both values of a spot in, as one step of undo. Only choices are put in; a reading is looked at, since to press on
 * a picture is not to measure.
 */
export function useAttempt({ x, y }: Pick<MapChoice, 'x' | 'y'>): Attempt {
  const session = useSession();
  const [why, setWhy] = useState<string>();
  const [tried, setTried] = useState<Plan>();
  const isTried = useLook(useCallback((it: Session) => tried !== undefined && it.plan === tried, [tried]));
  const attempt = (spot: Spot): void => {
    const read = [x, y].find((cell) => cell.kind !== 'choice');
    if (read !== undefined) {
      setWhy(`${read.label} is read, not chosen: enter it on its own page.`);
      return;
    }
    glide();
    const values = new Map([
      [x.name, spot.x],
      [y.name, spot.y],
    ]);
    const done = tryValues(session, values, `${x.label} and ${y.label.toLowerCase()}`);
    setWhy(done.ok ? undefined : done.why);
    setTried(done.ok ? session.plan : undefined);
  };
  return { attempt, why, clear: () => setWhy(undefined), isTried };
}
