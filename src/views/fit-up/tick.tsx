import type { ReactNode } from 'react';
import { stepDone, tickStep } from '../../session/fit-up/steps-done.ts';
import { usePlan, useSession } from '../use-session.ts';
import { by } from './by.ts';

interface Props {
  readonly step: string;
  /** What undo calls it. */
  readonly label: string;
  readonly children: ReactNode;
}

/** A row to tick with a thumb; who and when stand under it once it is ticked. */
export function Tick({ step, label, children }: Props) {
  const session = useSession();
  const row = stepDone(usePlan(), step);
  const done = row?.done === true;
  const noted = [row?.who, row?.when].filter(Boolean).join(', ');
  return (
    <label className="fit-up-tick" data-step={step} data-done={done ? '' : undefined}>
      <input
        type="checkbox"
        className="base-check"
        checked={done}
        onChange={() => tickStep(session, step, `${done ? 'Tick off' : 'Tick'}: ${label}`, by(session))}
      />
      <span>
        {children}
        {done && noted !== '' && <span className="fit-up-by type-small">{noted}</span>}
      </span>
    </label>
  );
}
