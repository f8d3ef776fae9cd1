import type { CellName } from './names.ts';

/**
 * A name as code asks for it. One written out in the source must be in the templates, or it does not compile; one known
 * only while the program runs, as an owner's own cell is, may be any string.
 */
export type Known<N extends string, Names extends string = CellName> = string extends N
  ? N
  : N extends Names
    ? N
    : never;
