/** Texts that were refused, each under a key of its field. */
export class KeptDrafts {
  #drafts: ReadonlyMap<string, { readonly typed: string; readonly why?: string }> = new Map();
  readonly #listeners = new Set<() => void>();

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  /** The same object until it changes. */
  get(key: string): { readonly typed: string; readonly why?: string } | undefined {
    return this.#drafts.get(key);
  }

  keep(key: string, typed: string, why?: string): void {
    this.#drafts = new Map(this.#drafts).set(key, why === undefined ? { typed } : { typed, why });
    this.#tell();
  }

  drop(key: string): void {
    if (!this.#drafts.has(key)) return;
    const rest = new Map(this.#drafts);
    rest.delete(key);
    this.#drafts = rest;
    this.#tell();
  }

  #tell(): void {
    for (const listener of [...this.#listeners]) listener();
  }
}

const bySession = new WeakMap<object, KeptDrafts>();

/** The drafts that belong to a session: they outlive the page that shows them. */
export function keptDraftsOf(session: object): KeptDrafts {
  const known = bySession.get(session) ?? new KeptDrafts();
  bySession.set(session, known);
  return known;
}
