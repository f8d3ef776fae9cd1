import { type PointerEvent, useRef } from 'react';

/** Half the width of what a finger takes for the thumb, px. */
const REACH = 22;
/** How far a finger goes along before it drags, px. */
const SLACK = 6;
/** How long after a touch the browser may still make mouse events of it, ms. */
const ECHO = 700;

interface Rule {
  readonly value: number;
  readonly min: number;
  readonly max: number;
}

interface Drag extends Rule {
  readonly x: number;
  readonly y: number;
  readonly length: number;
  readonly moving: boolean;
}

interface Asked {
  readonly rule: Rule;
  /** Width of the thumb as a finger meets it, px. */
  readonly thumb: number;
  readonly onDrag: (value: number) => void;
  /** The touch was a scroll: what it did so far is to be taken back. */
  readonly onScroll: () => void;
}

interface Finger {
  /** Whether the browser's own changes come from a finger, and so are none. */
  readonly isTouching: () => boolean;
  readonly on: {
    readonly onPointerDown: (event: PointerEvent<HTMLElement>) => void;
    readonly onPointerMove: (event: PointerEvent<HTMLElement>) => void;
    readonly onPointerUp: (event: PointerEvent<HTMLElement>) => void;
    readonly onPointerCancel: (event: PointerEvent<HTMLElement>) => void;
  };
}

const isFinger = (event: PointerEvent): boolean => event.pointerType !== 'mouse';

/**
 * Drags of a finger on a rule: from the thumb alone and along it, for a finger that lands beside the thumb or moves
 * across it is scrolling the page. The browser's own slider would jump to wherever it is touched.
 */
export function useFingerDrag({ rule, thumb, onDrag, onScroll }: Asked): Finger {
  const drag = useRef<Drag>(undefined);
  const touching = useRef(false);
  const quietUntil = useRef(0);
  const end = (event: PointerEvent): void => {
    if (!isFinger(event)) return;
    drag.current = undefined;
    touching.current = false;
    quietUntil.current = performance.now() + ECHO;
  };
  return {
    isTouching: () => touching.current || performance.now() < quietUntil.current,
    on: {
      onPointerDown(event) {
        drag.current = undefined;
        touching.current = isFinger(event);
        quietUntil.current = 0;
        if (!touching.current || rule.max <= rule.min) return;
        const { left, width } = event.currentTarget.getBoundingClientRect();
        const length = width - thumb;
        const at = left + thumb / 2 + ((rule.value - rule.min) / (rule.max - rule.min)) * length;
        if (length <= 0 || Math.abs(event.clientX - at) > REACH) return;
        drag.current = { ...rule, x: event.clientX, y: event.clientY, length, moving: false };
      },
      onPointerMove(event) {
        const now = drag.current;
        if (now === undefined || !isFinger(event)) return;
        const [along, across] = [event.clientX - now.x, event.clientY - now.y];
        if (!now.moving) {
          if (Math.max(Math.abs(along), Math.abs(across)) < SLACK) return;
          drag.current = Math.abs(across) >= Math.abs(along) ? undefined : { ...now, moving: true };
          if (drag.current === undefined) return;
        }
        const to = now.value + (along / now.length) * (now.max - now.min);
        onDrag(Math.min(now.max, Math.max(now.min, to)));
      },
      onPointerUp: end,
      onPointerCancel(event) {
        if (drag.current?.moving === true) onScroll();
        end(event);
      },
    },
  };
}
