import type { Value } from '../plan/plan.ts';

interface Answers {
  readonly workbook: { readonly names: readonly string[] } | undefined;
  readonly value: (name: string) => Value;
  /** Grows when another plan takes this one's place. */
  readonly opened: number;
}

/**
 * The last value that each cell had, so that a part which cannot be computed any more can still be shown where it stood.
 * Another plan's values are no guide: they are forgotten when one is opened.
 */
export class LastGood {
  readonly #values = new Map<string, Value>();
  #opened: number | undefined;

  remember(session: Answers): void {
    if (session.opened !== this.#opened) this.#values.clear();
    this.#opened = session.opened;
    for (const name of session.workbook?.names ?? []) {
      const value = session.value(name);
      if (value !== null) this.#values.set(name, value);
    }
  }

  readonly value = (name: string): Value => this.#values.get(name) ?? null;
}
