import { openPlan } from '../../plan/file/open-plan.ts';
import { writePlan } from '../../plan/file/write-plan.ts';
import type { Plan } from '../../plan/plan.ts';

const KEY = 'sternmount-last-edit';

/** An edit that the page had no time to store. */
export interface Tail {
  readonly id: string;
  /** Milliseconds since 1970. */
  readonly when: number;
  readonly plan: Plan;
}

type Storage = Pick<globalThis.Storage, 'getItem' | 'setItem' | 'removeItem'>;

/**
 * Holds on to the newest edit while the page goes away: the store itself answers too late then, this one at once. It
 * never holds more than that one edit, and a browser that refuses it loses nothing that was kept before.
 */
export function holdTail(storage: Storage, id: string, when: number, plan: Plan): void {
  try {
    storage.setItem(KEY, JSON.stringify({ id, when, text: writePlan(plan) }));
  } catch {
    // Full or forbidden: the last save still stands.
  }
}

export function dropTail(storage: Storage): void {
  try {
    storage.removeItem(KEY);
  } catch {
    // Where nothing can be held there is nothing to drop.
  }
}

/** The edit held on to, if there is one that can still be read. */
export function readTail(storage: Storage): Tail | undefined {
  try {
    const held: unknown = JSON.parse(storage.getItem(KEY) ?? 'null');
    if (
      typeof held !== 'object' ||
      held === null ||
      !('id' in held) ||
      !('when' in held) ||
      !('text' in held)
    ) {
      return undefined;
    }
    const { id, when, text } = held;
    if (typeof id !== 'string' || typeof when !== 'number' || typeof text !== 'string') return undefined;
    const opened = openPlan(text);
    return opened.ok ? { id, when, plan: opened.plan } : undefined;
  } catch {
    return undefined;
  }
}

/** Whether what was held on to is an edit that the store never had: the save itself may have ended while the page went. */
export const isMissing = (
  tail: Tail,
  id: string,
  stored: { readonly when: number; readonly plan: Plan },
): boolean => tail.id === id && tail.when > stored.when && writePlan(tail.plan) !== writePlan(stored.plan);
