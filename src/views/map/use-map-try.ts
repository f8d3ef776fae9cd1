import { type KeyboardEvent, type PointerEvent, type RefObject, useState } from 'react';
import type { Units } from '../../plan/plan.ts';
import type { InputCell } from '../../plan/template.ts';
import { settled, stepped } from '../parts/step.ts';
import { useSession } from '../use-session.ts';
import type { Spot } from './map-ask.ts';
import type { MapBox } from './map-box.ts';
import type { Attempt } from './use-attempt.ts';

interface Asked {
  readonly x: InputCell;
  readonly y: InputCell;
  readonly units: Units;
  readonly box: MapBox | undefined;
  readonly frame: RefObject<HTMLElement | null>;
  readonly tries: Attempt;
}

interface Tries {
  readonly cursor: Spot | undefined;
  readonly on: {
    readonly onKeyDown: (event: KeyboardEvent) => void;
    readonly onPointerMove: (event: PointerEvent) => void;
    readonly onPointerLeave: () => void;
    readonly onBlur: () => void;
    readonly onClick: (event: { readonly clientX: number; readonly clientY: number }) => void;
  };
}

/** A count's nearest step, a measure's nearest place on its step grid. */
function nearestOf(cell: InputCell, value: number, units: Units): number {
  const { only } = cell;
  if (only === undefined) return settled(cell, value, units);
  return only.reduce((best, it) => (Math.abs(it - value) < Math.abs(best - value) ? it : best));
}

const MANY = 10;

/** Moves of the keys: across and up, in steps. */
const MOVES: Readonly<Record<string, readonly [across: number, up: number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
  PageUp: [0, MANY],
  PageDown: [0, -MANY],
  Home: [-MANY, 0],
  End: [MANY, 0],
};

/** Trying spots on a map: pointing or arrow keys look, a press or Enter tries. */
export function useMapTry({ x, y, units, box, frame, tries }: Asked): Tries {
  const session = useSession();
  const [cursor, setCursor] = useState<Spot>();
  const under = ({
    clientX,
    clientY,
  }: {
    readonly clientX: number;
    readonly clientY: number;
  }): Spot | undefined => {
    const bounds = frame.current?.getBoundingClientRect();
    if (bounds === undefined || box === undefined) return undefined;
    return {
      x: nearestOf(x, box.valueX(clientX - bounds.left), units),
      y: nearestOf(y, box.valueY(clientY - bounds.top), units),
    };
  };
  const step = (cell: InputCell, start: number, by: number): number => {
    let value = start;
    for (let i = 0; i < Math.abs(by); i++) value = stepped(cell, value, by > 0 ? 1 : -1, units);
    const [low, high] = cell.usual ?? [value, value];
    return Math.min(Math.max(high, start), Math.max(Math.min(low, start), value));
  };
  const here = (): Spot | undefined => {
    const [a, b] = [session.value(x.name), session.value(y.name)];
    return cursor ?? (typeof a === 'number' && typeof b === 'number' ? { x: a, y: b } : undefined);
  };

  return {
    cursor,
    on: {
      onKeyDown(event) {
        const start = here();
        const move = MOVES[event.key];
        if (start === undefined) return;
        if (move !== undefined) setCursor({ x: step(x, start.x, move[0]), y: step(y, start.y, move[1]) });
        else if (event.key === 'Enter' || event.key === ' ') {
          tries.attempt(start);
          event.preventDefault();
          return;
        } else if (event.key === 'Escape') setCursor(undefined);
        else return;
        tries.clear();
        event.preventDefault();
      },
      onPointerMove(event) {
        if (event.pointerType === 'touch') return;
        tries.clear();
        setCursor(under(event));
      },
      onPointerLeave: () => setCursor(undefined),
      onBlur: () => setCursor(undefined),
      onClick(event) {
        const spot = under(event);
        if (spot === undefined) return;
        tries.attempt(spot);
        setCursor(undefined);
      },
    },
  };
}
