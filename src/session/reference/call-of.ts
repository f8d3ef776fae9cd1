import type { LibraryFunction, TableFunction } from '../../calc/record.ts';

/** How a library function is called: its arguments in order, those that may be left out in square brackets. */
export const callOf = (it: LibraryFunction | TableFunction): string =>
  `${it.id}(${it.arguments.map((one) => (one.default === undefined ? one.name : `[${one.name}]`)).join('; ')})`;
