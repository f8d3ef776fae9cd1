import {
  type KeyboardEvent,
  type MouseEvent,
  type PointerEvent,
  type RefObject,
  useId,
  useRef,
  useState,
} from 'react';
import type { Plan, Units } from '../../plan/plan.ts';
import type { InputCell } from '../../plan/template.ts';
import { glide } from '../parts/glide.ts';
import { settled, stepped } from '../parts/step.ts';
import { useSession } from '../use-session.ts';
import type { Plot } from './plot-box.ts';

interface Asked {
  readonly cell: InputCell;
  readonly units: Units;
  readonly low: number;
  readonly high: number;
  readonly plot: Plot;
  readonly frame: RefObject<HTMLElement | null>;
  /** A value is looked at without being put in; undefined when no longer. */
  readonly onLook: (value: number | undefined) => void;
}

interface Tries {
  readonly on: {
    readonly onKeyDown: (event: KeyboardEvent) => void;
    readonly onFocus: () => void;
    readonly onPointerMove: (event: PointerEvent) => void;
    readonly onPointerLeave: () => void;
    readonly onClick: (event: MouseEvent) => void;
  };
  /** Why the last value tried was not put in. */
  readonly why: string | undefined;
  /** The plan as the last try left it. */
  readonly tried: Plan | undefined;
}

/**
 * Trying values on a plot: pointing looks, a press or a key puts the value in, and one visit by keys is one step of
 * undo. Only choices are put in; a reading is looked at, since to press on a picture is not to measure.
 */
export function useTry({ cell, units, low, high, plot, frame, onLook }: Asked): Tries {
  const session = useSession();
  const id = useId();
  const visit = useRef(0);
  const looked = useRef<number>(undefined);
  const [why, setWhy] = useState<string>();
  const [tried, setTried] = useState<Plan>();

  const inside = (value: number): number => Math.min(high, Math.max(low, value));
  const look = (value: number | undefined): void => {
    looked.current = value;
    onLook(value);
  };
  const attempt = (value: number): void => {
    if (cell.kind !== 'choice') {
      look(value);
      setWhy('This is read, not chosen: enter it on its own page.');
      return;
    }
    glide();
    const done = session.choose(cell.name, value, `sweep ${id} ${visit.current}`);
    look(undefined);
    setWhy(done.ok ? undefined : done.why);
    setTried(done.ok ? session.plan : undefined);
  };
  const under = (event: MouseEvent): number => {
    const value = plot.valueAt(event.clientX - (frame.current?.getBoundingClientRect().left ?? 0));
    const { only } = cell;
    if (only === undefined) return inside(settled(cell, value, units));
    return only.reduce((best, it) => (Math.abs(it - value) < Math.abs(best - value) ? it : best));
  };
  const present = (): number | undefined => {
    const value = looked.current ?? session.value(cell.name);
    return typeof value === 'number' ? value : undefined;
  };
  const stepsFrom = (start: number, steps: number): number => {
    let value = start;
    for (let i = 0; i < Math.abs(steps); i++) value = stepped(cell, value, steps > 0 ? 1 : -1, units);
    return inside(value);
  };

  return {
    why,
    tried,
    on: {
      onKeyDown(event) {
        const start = present();
        if (start === undefined) return;
        const steps: Readonly<Record<string, number>> = {
          ArrowRight: 1,
          ArrowUp: 1,
          ArrowLeft: -1,
          ArrowDown: -1,
          PageUp: 10,
          PageDown: -10,
        };
        const by = steps[event.key];
        const end = event.key === 'Home' ? low : event.key === 'End' ? high : undefined;
        const to = end ?? (by === undefined ? undefined : stepsFrom(start, by));
        if (to === undefined) return;
        event.preventDefault();
        attempt(to);
      },
      onFocus() {
        visit.current += 1;
      },
      onPointerMove(event) {
        if (event.pointerType === 'touch') return;
        setWhy(undefined);
        look(under(event));
      },
      onPointerLeave: () => look(undefined),
      onClick(event) {
        visit.current += 1;
        attempt(under(event));
      },
    },
  };
}
