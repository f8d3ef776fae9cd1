import { checksum } from './checksum.ts';

/** A plan as it lies in the store. */
export interface Stored {
  readonly plan: string;
  /** Counts up with every save of this plan. */
  readonly serial: number;
  /** The version of the plan file that the text is in. */
  readonly schema: number;
  readonly title: string;
  readonly text: string;
  readonly check: number;
  /** When it was written, milliseconds since 1970. */
  readonly when: number;
}

export type Slot = 0 | 1;

/** The two newest saves of a plan lie in two slots in turn, so that a write that goes wrong leaves the one before. */
export interface StoredSlot extends Stored {
  readonly slot: Slot;
  /** What can be undone from here, with a checksum of its own: it may be damaged and the plan not. */
  readonly journal?: { readonly text: string; readonly check: number };
}

/** Whether a record is what was once written. Records are read from outside, so nothing about them is certain. */
export const isSound = (it: Stored): boolean =>
  typeof it.text === 'string' && Number.isInteger(it.serial) && it.check === checksum(it.text);

/** Newest first. */
export const byAge = (a: Stored, b: Stored): number => b.serial - a.serial;
