/** A value that can be watched. The same value stays the same object until it changes. */
export interface Observable<T> {
  readonly value: T;
  /** Calls back after each change; gives back how to stop that. */
  readonly subscribe: (listener: () => void) => () => void;
}

export class Subject<T> implements Observable<T> {
  #value: T;
  readonly #listeners = new Set<() => void>();

  constructor(value: T) {
    this.#value = value;
  }

  get value(): T {
    return this.#value;
  }

  set(value: T): void {
    if (Object.is(value, this.#value)) return;
    this.#value = value;
    for (const listener of [...this.#listeners]) listener();
  }

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => {
      this.#listeners.delete(listener);
    };
  };
}
