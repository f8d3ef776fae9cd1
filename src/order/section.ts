import type { Profile } from '../calc/transom/profile.ts';
import type { Units } from '../plan/plan.ts';
import type { Ask } from './ask.ts';

export interface OrderTable {
  readonly heads: readonly { readonly text: string; readonly figure?: true; readonly share?: number }[];
  readonly rows: readonly (readonly string[])[];
}

/** A part of the order, as plain data: page and paper show the same. */
export interface OrderSection {
  readonly title: string;
  readonly lead: string;
  readonly tables: readonly OrderTable[];
  /** Why nobody drills by it, one sentence; absent when the plan can be built. */
  readonly stop?: string;
  /** What whoever buys or cuts must know, whole sentences. */
  readonly notes: readonly string[];
  /** What cannot be ordered yet, and why. */
  readonly unanswered: readonly string[];
  /** Inputs that the section rests on. */
  readonly restsOn: readonly string[];
}

/** What a section is made from. */
export interface OrderGiven {
  readonly ask: Ask;
  readonly units: Units;
  readonly profile: Profile;
}
