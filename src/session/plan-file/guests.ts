import { CAPS } from '../../plan/caps.ts';
import { openPlan, type Reason } from '../../plan/file/open-plan.ts';
import type { Plan } from '../../plan/plan.ts';

/** A plan from a file that is looked at before it is kept, or a file that could not be opened. */
export type Guest =
  | {
      readonly kind: 'visitor';
      readonly name: string;
      readonly plan: Plan;
      /** What was done to it on the way in, one sentence each. */
      readonly notes: readonly string[];
    }
  | {
      readonly kind: 'refused';
      readonly name: string;
      /** Absent when the file could not even be read. */
      readonly reason: Reason | undefined;
      readonly why: string;
      /** The text as it was, so that it is never lost; absent when it was not read. */
      readonly text: string | undefined;
    };

/** As much of a `File` as is needed. */
export interface Opening {
  readonly name: string;
  readonly size: number;
  readonly text: () => Promise<string>;
}

/** The file being looked at. It outlives the page that shows it. */
export class Guests {
  #guest: Guest | undefined;
  readonly #listeners = new Set<() => void>();

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  /** The same object until it changes. */
  get guest(): Guest | undefined {
    return this.#guest;
  }

  async open(file: Opening): Promise<void> {
    const { name } = file;
    const refused = { kind: 'refused', name, text: undefined } as const;
    if (file.size > CAPS.file) {
      const why = `The file has ${file.size} bytes; a plan has at most ${CAPS.file}. It was not read, and is as it was.`;
      this.#set({ ...refused, reason: 'too large', why });
      return;
    }
    let text: string;
    try {
      text = await file.text();
    } catch {
      this.#set({
        ...refused,
        reason: undefined,
        why: 'This browser could not read the file. It is as it was.',
      });
      return;
    }
    this.tryText(name, text);
  }

  /** Opens a text as if it came from the file of that name. */
  tryText(name: string, text: string): void {
    const opened = openPlan(text);
    this.#set(
      opened.ok
        ? { kind: 'visitor', name, plan: opened.plan, notes: opened.notes }
        : { kind: 'refused', name, reason: opened.reason, why: opened.why, text },
    );
  }

  leave(): void {
    this.#set(undefined);
  }

  #set(guest: Guest | undefined): void {
    this.#guest = guest;
    for (const listener of [...this.#listeners]) listener();
  }
}

const bySession = new WeakMap<object, Guests>();

/** The guests of a session. */
export function guestsOf(session: object): Guests {
  const known = bySession.get(session) ?? new Guests();
  bySession.set(session, known);
  return known;
}
