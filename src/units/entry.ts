/** What kind of value an input takes. */
export type EntryKind = 'length' | 'number' | 'whole' | 'flag' | 'word';

/** What is asked for when a person types. */
export type Ask = {
  /** The input's label, as it stands in sentences. */
  readonly name: string;
  readonly kind: EntryKind;
  /** The input's base unit: mm, deg, kn, N, N·m, MPa, kg, kg/m³, mm², m², –, %. */
  readonly unit: string;
  /** The words an input of kind `word` takes. */
  readonly words?: readonly string[] | undefined;
  /** The unit of a bare number for an input of kind `length`; other kinds take a bare number in their base unit. */
  readonly bare: 'mm' | 'in';
};

/** A value read from what was typed. */
export type ReadEntry = {
  readonly ok: true;
  readonly empty: false;
  /** In the base unit: the double nearest to the exact value typed. */
  readonly value: number | boolean | string;
  /** The unit typed, or assumed for a bare number; '' for a flag or a word. */
  readonly unit: string;
  /** The text without the spaces round it. */
  readonly typed: string;
};

/** Nothing was typed: the cell is to be empty. */
export type EmptyEntry = { readonly ok: true; readonly empty: true; readonly typed: string };

/** Not understood: `why` is one or more whole sentences. */
export type RefusedEntry = { readonly ok: false; readonly why: string };

export type Entry = ReadEntry | EmptyEntry | RefusedEntry;

/** A value that was read. */
export const read = (value: number | boolean | string, unit: string, typed: string): ReadEntry => ({
  ok: true,
  empty: false,
  value,
  unit,
  typed,
});

/** A refusal, in whole sentences. */
export const refused = (why: string): RefusedEntry => ({ ok: false, why });
