import { type Bare, inUnit, isBareLength, otherUnit, type UnitDoubt } from './unit-doubt.ts';

/** Asked before anything is put in. */
export interface UnitQuestion {
  /** At least one. */
  readonly doubts: readonly UnitDoubt[];
  /** How many lengths without a unit the answer is for. */
  readonly count: number;
  readonly answer: (unit: Bare) => void;
  /** Nothing is put in. */
  readonly leave: () => void;
}

/** Lengths without a unit that a person put in at once. */
export interface Lengths {
  readonly typed: readonly string[];
  readonly doubts: readonly UnitDoubt[];
  /** The unit they are in unless the person says otherwise. */
  readonly meant: Bare;
  readonly put: (unit: Bare) => void;
  readonly leave: () => void;
}

/** The question about units that a session is waiting for, if it is, and what was answered to those before. */
export class UnitQuestions {
  #now: UnitQuestion | undefined;
  /** Where somebody has said that a bare length is in the unit it is taken for. */
  readonly #settled = new Set<string>();
  readonly #listeners = new Set<() => void>();

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  readonly now = (): UnitQuestion | undefined => this.#now;

  /** Puts lengths in once it is clear what unit they are in; whether that has to be asked first. */
  whenClear({ typed, doubts, meant, put, leave }: Lengths): boolean {
    const open = doubts.filter((it) => !this.#settled.has(it.key));
    if (open.length === 0) {
      put(meant);
      return false;
    }
    // A second question takes the place of one that nobody answered.
    this.#now?.leave();
    const done = (then: () => void): void => {
      this.#now = undefined;
      then();
      this.#tell();
    };
    this.#now = {
      doubts: open,
      count: typed.filter(isBareLength).length,
      answer: (unit) =>
        done(() => {
          if (unit === meant) for (const { key } of open) this.#settled.add(key);
          put(unit);
        }),
      leave: () => done(leave),
    };
    this.#tell();
    return true;
  }

  #tell(): void {
    for (const listener of [...this.#listeners]) listener();
  }
}

const bySession = new WeakMap<object, UnitQuestions>();

export function unitQuestionsOf(session: object): UnitQuestions {
  const known = bySession.get(session) ?? new UnitQuestions();
  bySession.set(session, known);
  return known;
}

/** Why a text that was left without its unit is not put in. */
export const leftWhy = (doubt: UnitDoubt): string =>
  `It is not clear whether ${doubt.typed} is in mm or in inches: write ${inUnit(doubt.typed, doubt.meant)} or ${inUnit(doubt.typed, otherUnit(doubt.meant))}.`;
