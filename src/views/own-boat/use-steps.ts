import { useState } from 'react';
import { stateOf, textOf } from '../../session/own-boat/kept-text.ts';
import type { OwnBoatState } from '../../session/own-boat/own-boat.ts';
import type { Memory } from './memory.ts';

/** The steps taken so far, remembered at each change. */
export function useSteps(memory: Memory): readonly [OwnBoatState, (next: OwnBoatState) => void] {
  const [state, setState] = useState(() => stateOf(memory.read()));
  const set = (next: OwnBoatState): void => {
    memory.write(textOf(next));
    setState(next);
  };
  return [state, set];
}
