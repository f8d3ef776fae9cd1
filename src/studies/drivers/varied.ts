import type { Law } from '../../calc/uncertainty/shared-error.ts';
import type { InFit, ReadingError } from '../uncertain/reading-error.ts';

/** A number that may move, as plain data: a reading or a choice. */
export interface Varied {
  readonly name: string;
  readonly value: number;
  /** Half-width of its error, one standard deviation of a normal one; 0 where it has none. */
  readonly offBy: number;
  readonly law: Law;
  readonly with?: string | undefined;
  /** As in `ReadingError`. */
  readonly fit?: InFit | undefined;
  /** It goes by whole steps. */
  readonly whole: boolean;
  /** What it cannot go past, where there is such. */
  readonly least?: number | undefined;
  readonly most?: number | undefined;
  /** A usual step, for an input whose value and error are both 0. */
  readonly step?: number | undefined;
}

/** The numbers that have an error. */
export const errorsAmong = (varied: readonly Varied[]): readonly ReadingError[] =>
  varied.filter((it) => it.offBy > 0 && !it.whole);
