import { useCallback } from 'react';
import { cellNamed } from '../../plan/book.ts';
import type { Session } from '../../session/session.ts';
import { takeOver, takeOverFor } from '../../session/survey/take-over.ts';
import { useLook, useSession } from '../use-session.ts';
import { bareUnit } from './length-style.ts';
import { shown } from './show.ts';
import { useUnits } from './use-units.ts';

interface Props {
  readonly name: string;
  /** Only what comes from this result is offered. */
  readonly from?: string;
}

/** Lets a reading of the boat follow what the survey gave; nothing while nothing was measured for it. */
export function TakeOver({ name, from }: Props) {
  const session = useSession();
  const units = useUnits();
  const offer = useLook(useCallback((it: Session) => takeOverFor(it.plan, name), [name]));
  const value = useLook(
    useCallback((it: Session) => (offer === undefined ? null : it.value(offer.from)), [offer]),
  );
  if (offer === undefined || value === null || (from !== undefined && offer.from !== from)) return null;
  const cell = cellNamed(name);
  const label = cell?.label ?? name;
  return (
    <button
      type="button"
      className="base-plain-button take-over"
      data-take-over={name}
      onClick={() => takeOver(session, offer, label)}
    >
      {from === undefined
        ? `take ${shown(value, cell?.unit ?? '–', bareUnit(units))} from the survey`
        : 'let Boat follow it'}
      <span className="base-spoken">, {label}</span>
    </button>
  );
}
