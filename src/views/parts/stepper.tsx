import { useCallback, useEffect, useRef } from 'react';
import type { InputCell } from '../../plan/template.ts';
import type { Session } from '../../session/session.ts';
import { useLook, useSession } from '../use-session.ts';
import { glide } from './glide.ts';
import { Icon } from './icon.tsx';
import { stepped } from './step.ts';
import './stepper.css';

const BEFORE_REPEATING = 450;
const BETWEEN_REPEATS = 90;

let holds = 0;

interface Props {
  readonly cell: InputCell;
  readonly direction: 1 | -1;
  /** Hears why a step was refused, or undefined when it was taken. */
  readonly onTold: (why: string | undefined) => void;
}

/** One press, one step of a choice; held down it goes on, and all of that is one step of undo. */
export function Stepper({ cell, direction, onTold }: Props) {
  const session = useSession();
  const disabled = useLook(
    useCallback(
      (it: Session) => {
        const value = it.value(cell.name);
        return (
          it.plan.locked.has(cell.name) ||
          typeof value !== 'number' ||
          stepped(cell, value, direction, it.plan.units) === value
        );
      },
      [cell, direction],
    ),
  );
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  /** A press that already stepped on the way down does not step again on its click. */
  const stepsAlready = useRef(false);

  const step = (gesture?: string): void => {
    const value = session.value(cell.name);
    if (typeof value !== 'number') return;
    glide();
    const done = session.choose(cell.name, stepped(cell, value, direction, session.plan.units), gesture);
    onTold(done.ok ? undefined : done.why);
  };
  const release = (): void => clearTimeout(timer.current);
  const gesture = useRef('');
  const hold = (button: number): void => {
    if (button !== 0 || disabled) return;
    gesture.current = `hold ${++holds}`;
    const again = (): void => {
      stepsAlready.current = true;
      step(gesture.current);
      timer.current = setTimeout(again, BETWEEN_REPEATS);
    };
    stepsAlready.current = false;
    timer.current = setTimeout(again, BEFORE_REPEATING);
  };
  useEffect(() => release, []);
  // A button that becomes disabled under the finger hears no release.
  useEffect(() => {
    if (disabled) clearTimeout(timer.current);
  }, [disabled]);

  return (
    <button
      className="stepper"
      type="button"
      aria-label={`${cell.label}: one step ${direction === 1 ? 'up' : 'down'}`}
      disabled={disabled}
      onPointerDown={(event) => hold(event.button)}
      onPointerUp={release}
      onPointerLeave={release}
      onPointerCancel={() => {
        // The touch has become a scroll.
        release();
        session.takeBack(gesture.current);
      }}
      onContextMenu={(event) => event.preventDefault()}
      onClick={() => {
        if (stepsAlready.current) stepsAlready.current = false;
        else step();
      }}
    >
      <Icon name={direction === 1 ? 'plus' : 'minus'} />
    </button>
  );
}
