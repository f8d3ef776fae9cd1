import { useSyncExternalStore } from 'react';

/** How the page is laid out: three columns, two, drawing and choices side by side on a low screen, or one column. */
export type Shape = 'three' | 'two' | 'low' | 'one';

/** Room in rem, so that larger letters make fewer columns. */
const THREE_WIDE = 80;
const TWO_WIDE = 45;
const SIDE_BY_SIDE = 35;
const HIGH_ENOUGH = 30;

/** The layout for a window of so many px, when 1 rem is so many px. */
export function shapeOf(width: number, height: number, rem: number): Shape {
  const wide = width / rem;
  const isHigh = height / rem >= HIGH_ENOUGH;
  if (isHigh && wide >= THREE_WIDE) return 'three';
  if (isHigh && wide >= TWO_WIDE) return 'two';
  return !isHigh && wide >= SIDE_BY_SIDE ? 'low' : 'one';
}

const remNow = (): number => Number.parseFloat(getComputedStyle(document.documentElement).fontSize);

let now: Shape | undefined;

const measured = (): Shape => shapeOf(window.innerWidth, window.innerHeight, remNow());

function subscribe(listener: () => void): () => void {
  const update = (): void => {
    const next = measured();
    if (next === now) return;
    now = next;
    listener();
  };
  // An element of 1 rem tells when the reader changes the size of letters.
  const probe = document.createElement('div');
  probe.className = 'shape-probe';
  document.body.append(probe);
  const observer = new ResizeObserver(update);
  observer.observe(probe);
  window.addEventListener('resize', update);
  return () => {
    observer.disconnect();
    probe.remove();
    window.removeEventListener('resize', update);
  };
}

const snapshot = (): Shape => {
  now ??= measured();
  return now;
};

/** The page's layout now. */
export const useShape = (): Shape => useSyncExternalStore(subscribe, snapshot);
