import { useEffect, useRef } from 'react';
import { inputNamed } from '../../plan/book.ts';
import type { InputName } from '../../plan/names.ts';
import { drilledAsPlanned, lockAsDrilled } from '../../session/fit-up/enter-fitted.ts';
import { Action } from '../parts/action.tsx';
import { Icon } from '../parts/icon.tsx';
import { shown } from '../parts/show.ts';
import { usePlan, useSession } from '../use-session.ts';
import { by } from './by.ts';
import { FittedRow } from './fitted-row.tsx';
import { useSay } from './say.ts';

interface Props {
  readonly drills: readonly InputName[];
  readonly title: string;
}

/** Offers to lock what a step's holes have fixed, as it was drilled, or says that it is locked. */
export function LockOffer({ drills, title }: Props) {
  const session = useSession();
  const say = useSay();
  const plan = usePlan();
  const wasPressed = useRef(false);
  const told = useRef<HTMLParagraphElement>(null);
  const isLocked = (name: InputName): boolean =>
    plan.locked.has(name) &&
    (plan.fit.fitted.get(name)?.value ?? session.value(name)) === session.value(name);
  const open = drills.filter((name) => !isLocked(name));
  const unread = open.filter((name) => !plan.fit.fitted.has(name));
  const short = (name: InputName): string => inputNamed(name)?.short ?? name;
  const valued = (name: InputName): string =>
    `${short(name)} ${shown(plan.fit.fitted.get(name)?.value ?? session.value(name), inputNamed(name)?.unit ?? '–', plan.units)}`;
  // The button that was pressed is gone: the words in its place take the focus.
  useEffect(() => {
    if (open.length === 0 && wasPressed.current) {
      wasPressed.current = false;
      told.current?.focus();
    }
  });
  if (open.length === 0) {
    return (
      <p ref={told} tabIndex={-1} className="fit-up-locked type-small">
        <Icon name="lock" /> Locked as drilled: {drills.map(valued).join(', ')}. Nothing here will propose to
        move it.
      </p>
    );
  }
  if (unread.length > 0) {
    return (
      <fieldset className="fit-up-lock">
        <legend className="type-small">
          What was drilled? Enter what you measure; then it can be locked.
        </legend>
        {open.map((name) => (
          <FittedRow key={name} name={name} />
        ))}
        <Action
          onPress={() => {
            const refused = unread
              .map((name) => drilledAsPlanned(session, name, by(session)))
              .find((it) => !it.ok);
            say(refused === undefined || refused.ok ? 'Taken as planned.' : refused.why);
          }}
        >
          {`I measured: just as planned (${unread.map(valued).join(', ')})`}
        </Action>
      </fieldset>
    );
  }
  return (
    <div className="fit-up-lock">
      <Action
        plate
        icon="lock"
        onPress={() => {
          wasPressed.current = true;
          const done = lockAsDrilled(session, open, title, by(session));
          say(done.ok ? `Locked as drilled: ${open.map(valued).join(', ')}.` : done.why);
        }}
      >
        {`Lock as drilled: ${open.map(valued).join(', ')}`}
      </Action>
      <p className="type-small base-soft">
        What you read takes the planned values’ place in every scenario: the hole is there in all of them.
      </p>
    </div>
  );
}
