import { useState } from 'react';
import { Action } from '../parts/action.tsx';

/** Rows shown at a time: a page of many hundred answers no key in time. */
const MOST = 40;

/** The stretch of a long list that is shown, and what moves along it. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly count: number;
  readonly move: (from: number) => void;
}

const lastFrom = (count: number): number => Math.max(0, Math.ceil(count / MOST) - 1) * MOST;

/** The stretch of a list of so many that is shown: its beginning, and its end when the list grows. */
export function useStretch(count: number): Stretch {
  const [shown, setShown] = useState({ from: 0, count });
  if (shown.count !== count) {
    const from = count > shown.count ? lastFrom(count) : Math.min(shown.from, lastFrom(count));
    setShown({ from, count });
  }
  const { from } = shown;
  return { from, to: Math.min(from + MOST, count), count, move: (it) => setShown({ from: it, count }) };
}

/** Which of many are shown, and the ways to the others; nothing where all are. */
export function StretchDoors({ stretch: { from, to, count, move } }: { readonly stretch: Stretch }) {
  if (count <= MOST) return null;
  return (
    <p className="own-cells-stretch type-small">
      <span role="status">
        Cells {from + 1} to {to} of {count}.
      </span>
      <Action disabled={from === 0} onPress={() => move(from - MOST)}>
        Earlier
      </Action>
      <Action disabled={to === count} onPress={() => move(from + MOST)}>
        Later
      </Action>
    </p>
  );
}
