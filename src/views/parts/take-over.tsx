import { useCallback } from 'react';
import { cellNamed } from '../../plan/book.ts';
import type { Session } from '../../session/session.ts';
import { takeOver, takeOverFor } from '../../session/survey/take-over.ts';
import { useLook, useSession } from '../use-session.ts';
import { shown } from './show.ts';
import { useUnits } from './use-units.ts';

/** Lets a reading of the boat follow what the survey gave; nothing while nothing was measured for it. */
export function TakeOver({ name }: { readonly name: string }) {
  const session = useSession();
  const units = useUnits();
  const offer = useLook(useCallback((it: Session) => takeOverFor(it.plan, name), [name]));
  const value = useLook(
    useCallback((it: Session) => (offer === undefined ? null : it.value(offer.from)), [offer]),
  );
  if (offer === undefined || value === null) return null;
  const cell = cellNamed(name);
  const label = cell?.label ?? name;
  return (
    <button
      type="button"
      className="base-plain-button take-over"
      data-take-over={name}
      onClick={() => takeOver(session, offer, label)}
    >
      take {shown(value, cell?.unit ?? '–', units)} from the survey
      <span className="base-spoken"> as: {label}</span>
    </button>
  );
}
