import { type ReactNode, useEffect, useRef } from 'react';
import { Action } from '../parts/action.tsx';

export type Focus = 'nothing' | 'heading' | 'field';

interface Props {
  readonly at: number;
  readonly title: string;
  /** Which of how many. */
  readonly place: string;
  readonly onBack: (() => void) | undefined;
  /** What takes the focus as the step appears: nothing on the first, the field while the keyboard is in use. */
  readonly focus: Focus;
  readonly children: ReactNode;
}

/** One step, alone on the screen. */
export function StepFrame({ at, title, place, onBack, focus, children }: Props) {
  const frame = useRef<HTMLElement>(null);
  const head = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (focus === 'nothing') return;
    frame.current?.scrollIntoView({ block: 'start' });
    const field = focus === 'field' ? frame.current?.querySelector('input') : undefined;
    (field ?? head.current)?.focus({ preventScroll: true });
  }, [focus]);
  return (
    <section className="own-boat-step" ref={frame} data-step={at}>
      <p className="own-boat-place type-small base-soft">
        {place}
        {onBack !== undefined && <Action onPress={onBack}>Back</Action>}
      </p>
      <h2 className="own-boat-title type-page" ref={head} tabIndex={-1}>
        {title}
      </h2>
      {children}
    </section>
  );
}
