import { type MouseEvent, type RefObject, useLayoutEffect, useRef, useState } from 'react';

interface SelectAll {
  readonly box: RefObject<HTMLInputElement | null>;
  /** Selects the whole text now, and again once a text that is set in the same turn is shown. */
  readonly selectAll: () => void;
  /** A press that brings the focus puts no caret into the text, which would end the selection. */
  readonly onMouseDown: (event: MouseEvent<HTMLInputElement>) => void;
}

/** For a field whose text is typed over as a whole: what is typed takes its place from the moment it has the focus. */
export function useSelectAll(): SelectAll {
  const box = useRef<HTMLInputElement>(null);
  const [turn, setTurn] = useState(0);
  useLayoutEffect(() => {
    if (turn > 0 && document.activeElement === box.current) box.current?.select();
  }, [turn]);
  return {
    box,
    selectAll: () => {
      box.current?.select();
      setTurn((before) => before + 1);
    },
    onMouseDown: (event) => {
      if (event.button !== 0 || document.activeElement === event.currentTarget) return;
      event.preventDefault();
      event.currentTarget.focus({ preventScroll: true });
    },
  };
}
