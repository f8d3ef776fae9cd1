import { useLayoutEffect, useState } from 'react';

const KEY = 'sternmount deck light';

/** A browser that stores nothing starts with it off each time. */
function stored(): boolean {
  try {
    return localStorage.getItem(KEY) === 'on';
  } catch {
    return false;
  }
}

function store(on: boolean): void {
  try {
    localStorage.setItem(KEY, on ? 'on' : 'off');
  } catch {
    // The switch still works for as long as the page is open.
  }
}

/** The look for reading in the sun: whether it is on, and its switch. */
export function useDeckLight(): readonly [boolean, (on: boolean) => void] {
  const [on, setOn] = useState(stored);
  useLayoutEffect(() => {
    document.documentElement.dataset.deckLight = on ? 'on' : 'off';
  }, [on]);
  const set = (next: boolean): void => {
    store(next);
    setOn(next);
  };
  return [on, set];
}
