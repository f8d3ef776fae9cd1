import type { Draft } from '../../session/session.ts';
import type { Column } from './columns.ts';

/**
 * Refused texts of cells that the session keeps no draft for: how far a reading is off, and all of an own cell. Kept
 * as typed, with the reason, until mended or dropped.
 */
export interface Drafts {
  get(name: string, column: Column): Draft | undefined;
  set(name: string, column: Column, draft: Draft): void;
  drop(name: string, column: Column): void;
  /** Any listener hears of every change. */
  subscribe(listener: () => void): () => void;
}

const keyOf = (name: string, column: Column): string => `${column} ${name}`;

export function createDrafts(): Drafts {
  const drafts = new Map<string, Draft>();
  const listeners = new Set<() => void>();
  const tell = (): void => {
    for (const listener of [...listeners]) listener();
  };
  return {
    get: (name, column) => drafts.get(keyOf(name, column)),
    set(name, column, draft) {
      drafts.set(keyOf(name, column), draft);
      tell();
    },
    drop(name, column) {
      if (drafts.delete(keyOf(name, column))) tell();
    },
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
