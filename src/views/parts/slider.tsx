import { type KeyboardEvent, useCallback, useRef } from 'react';
import type { InputCell } from '../../plan/template.ts';
import type { Session } from '../../session/session.ts';
import { formatValue } from '../../units/format-value.ts';
import { useLook, useSession } from '../use-session.ts';
import { useFingerDrag } from './finger-drag.ts';
import { glide } from './glide.ts';
import { bareUnit, lengthStyle } from './length-style.ts';
import { settled, stepped } from './step.ts';
import { useUnits } from './use-units.ts';
import './slider.css';

let drags = 0;

const LARGE = 10;

const STEPS: Readonly<Record<string, number>> = {
  ArrowUp: 1,
  ArrowRight: 1,
  ArrowDown: -1,
  ArrowLeft: -1,
  PageUp: LARGE,
  PageDown: -LARGE,
};

interface Props {
  readonly cell: InputCell;
  /** Hears why a value was refused, or undefined when it was taken. */
  readonly onTold: (why: string | undefined) => void;
}

/** Width of the thumb under a finger, px, as the style sheet has it. */
const THUMB = 20;

/** Moves a choice through its usual range; one drag is one step of undo. */
export function Slider({ cell, onTold }: Props) {
  const session = useSession();
  const units = useUnits();
  const value = useLook(useCallback((it: Session) => it.value(cell.name), [cell.name]));
  const locked = useLook(useCallback((it: Session) => it.plan.locked.has(cell.name), [cell.name]));
  const gesture = useRef('');
  const [low, high] = cell.usual ?? [cell.min ?? 0, cell.max ?? 1];
  const now = typeof value === 'number' ? value : low;
  const rule = { value: now, min: Math.min(low, now), max: Math.max(high, now) };
  const slide = (to: number): void => {
    const next = settled(cell, to, units);
    if (next !== session.value(cell.name)) choose(next, gesture.current);
  };
  const { isTouching, on } = useFingerDrag({
    rule,
    thumb: THUMB,
    onDrag: slide,
    onScroll: () => {
      session.takeBack(gesture.current);
      onTold(undefined);
    },
  });

  const choose = (next: number, gestureNow?: string): void => {
    const done = session.choose(cell.name, next, gestureNow);
    onTold(done.ok ? undefined : done.why);
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const steps = STEPS[event.key];
    const end = event.key === 'Home' ? low : event.key === 'End' ? high : undefined;
    if (steps === undefined && end === undefined) return;
    event.preventDefault();
    let next = end ?? now;
    const direction = (steps ?? 0) < 0 ? -1 : 1;
    for (let i = 0; i < Math.abs(steps ?? 0); i++) next = stepped(cell, next, direction, units);
    glide();
    choose(next);
  };
  const end = (at: number): string => formatValue(at, cell.unit, { unit: bareUnit(units) });
  if (typeof value !== 'number') return null;

  return (
    <span className="slider">
      <span className="slider-end type-tick" aria-hidden="true">
        {end(low)}
      </span>
      <input
        className="slider-rule"
        type="range"
        aria-label={`${cell.label}, by sliding`}
        aria-valuetext={formatValue(value, cell.unit, lengthStyle(units))}
        min={rule.min}
        max={rule.max}
        step="any"
        value={value}
        disabled={locked}
        {...on}
        onPointerDown={(event) => {
          gesture.current = `slide ${++drags}`;
          on.onPointerDown(event);
        }}
        onKeyDown={onKeyDown}
        onChange={(event) => {
          if (!isTouching()) slide(Number(event.target.value));
        }}
      />
      <span className="slider-end type-tick" aria-hidden="true">
        {end(high)}
      </span>
    </span>
  );
}
