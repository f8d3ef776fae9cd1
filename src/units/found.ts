/** What was read from a row of tokens, and where the next one stands. */
export type Found<T> = { readonly value: T; readonly next: number };
