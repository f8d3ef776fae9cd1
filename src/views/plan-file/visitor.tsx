import { useEffect, useMemo, useRef } from 'react';
import type { Guest } from '../../session/plan-file/guests.ts';
import { whatChanges } from '../../session/plan-file/what-changes.ts';
import { Action } from '../parts/action.tsx';
import { usePlan, useSession } from '../use-session.ts';
import { ChangeTable } from './change-table.tsx';

interface Props {
  readonly guest: Guest & { readonly kind: 'visitor' };
  readonly onLeave: () => void;
}

/** A plan from a file before it is kept: what it would change, as text. Nothing of it is worked out yet. */
export function Visitor({ guest, onLeave }: Props) {
  const session = useSession();
  const plan = usePlan();
  const groups = useMemo(() => whatChanges(plan, guest.plan), [plan, guest.plan]);
  const count = groups.reduce((sum, group) => sum + group.changes.length, 0);
  const title = useRef<HTMLHeadingElement>(null);
  useEffect(() => title.current?.focus(), []);

  const keep = (): void => {
    session.open(guest.plan, `Open “${guest.plan.title}”`);
    onLeave();
  };
  return (
    <div className="plan-file-guest">
      <h4 className="type-section" ref={title} tabIndex={-1}>
        Visitor: “{guest.plan.title}”
      </h4>
      <p>
        From {guest.name}. Your plan stays as it is until you keep this one.{' '}
        {count === 0
          ? 'It is the same as the plan open here.'
          : `Kept, it would change ${count} ${count === 1 ? 'thing' : 'things'}:`}
      </p>
      {guest.notes.length > 0 && (
        <ul className="plan-file-notes type-small">
          {guest.notes.map((note) => (
            <li key={note}>{note}</li>
          ))}
        </ul>
      )}
      {groups.map((group) => (
        <ChangeTable key={group.title} group={group} />
      ))}
      <div className="plan-file-doors">
        <Action plate disabled={count === 0} onPress={keep}>
          Keep it in place of this plan
        </Action>
        <Action onPress={onLeave}>Leave it</Action>
      </div>
      <p className="type-small base-soft">Undo brings your plan back after you have kept this one.</p>
    </div>
  );
}
