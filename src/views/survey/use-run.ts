import { useRef } from 'react';

interface Run {
  /** The focus came into a column of the row. */
  readonly came: (column: number) => void;
  /** The column where the figures that were entered across this row began. */
  readonly start: () => number;
  /** The focus left the row. */
  readonly left: () => void;
}

const NONE = { start: 0, last: -2 };

/** Which figure of a row was the first of those entered one after the other across it. */
export function useRun(): Run {
  const run = useRef(NONE);
  return {
    came: (column) => {
      const { start, last } = run.current;
      if (column !== last) run.current = { start: column === last + 1 ? start : column, last: column };
    },
    start: () => run.current.start,
    left: () => {
      run.current = NONE;
    },
  };
}
