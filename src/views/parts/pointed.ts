import { useSyncExternalStore } from 'react';

let pointed: string | undefined;
const listeners = new Set<() => void>();

/** Says which input or result is pointed at, so that its part lights up wherever it is drawn; undefined: none. */
export function pointAt(name: string | undefined): void {
  if (name === pointed) return;
  pointed = name;
  for (const listener of [...listeners]) listener();
}

const subscribe = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

const now = (): string | undefined => pointed;

/** What is pointed at. */
export const usePointed = (): string | undefined => useSyncExternalStore(subscribe, now);

/** Whether one name is pointed at; renders again only when that changes. */
export const useIsPointed = (name: string): boolean =>
  useSyncExternalStore(subscribe, () => pointed === name);
