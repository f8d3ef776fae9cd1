import type { Law } from '../../calc/uncertainty/shared-error.ts';

/** How a figure of a survey table moves with all others of its table, as what is fitted through them is off. */
export interface InFit {
  /** The table. */
  readonly of: string;
  /** Degrees of freedom of the Student's law that the fit's two errors follow; null where they are normal. */
  readonly freedom: number | null;
  /** The figure where the fit is not off, and what one deviation of each of its two errors adds. */
  readonly middle: number;
  readonly by: readonly [number, number];
  /** Deviations of the first error that it cannot pass. */
  readonly least?: number;
  readonly most?: number;
}

/** An input's value and how far it may be off, as plain data; a figure of a survey table is one too. */
export interface ReadingError {
  readonly name: string;
  readonly value: number;
  /** Half-width of a rectangular error, one standard deviation of a normal one; above 0. */
  readonly offBy: number;
  readonly law: Law;
  /** What it was measured with; readings taken with the same thing may share their error. */
  readonly with?: string | undefined;
  /** It is off only together with its table: `offBy` is then the deviation that it would have by itself. */
  readonly fit?: InFit | undefined;
}

/** An error's standard deviation (JCGM 100:2008, 4.3.7 for a half-width). */
export const standardOf = ({ offBy, law }: Pick<ReadingError, 'offBy' | 'law'>): number =>
  law === 'normal' ? offBy : offBy / Math.sqrt(3);

/** Deviations that a normal error is taken to go where the worst is asked for. */
export const FURTHEST = 3;

/** The furthest a reading is taken to be off where the worst is asked for. */
export const furthest = ({ offBy, law }: Pick<ReadingError, 'offBy' | 'law'>): number =>
  law === 'normal' ? FURTHEST * offBy : offBy;
