import { cellNamed } from '../plan/book.ts';

/** What cells are called on screen. */
export const labelsOf = (names: readonly string[]): readonly string[] =>
  names.map((name) => cellNamed(name)?.label ?? name);
