import type { Law } from '../../calc/uncertainty/shared-error.ts';

/** An input's value and how far it may be off, as plain data. */
export interface ReadingError {
  readonly name: string;
  readonly value: number;
  /** Half-width of a rectangular error, one standard deviation of a normal one; above 0. */
  readonly offBy: number;
  readonly law: Law;
  /** What it was measured with; readings taken with the same thing may share their error. */
  readonly with?: string | undefined;
}

/** An error's standard deviation (JCGM 100:2008, 4.3.7 for a half-width). */
export const standardOf = ({ offBy, law }: Pick<ReadingError, 'offBy' | 'law'>): number =>
  law === 'normal' ? offBy : offBy / Math.sqrt(3);

/** The furthest a reading is taken to be off where the worst is asked for: three deviations of a normal error. */
export const furthest = ({ offBy, law }: Pick<ReadingError, 'offBy' | 'law'>): number =>
  law === 'normal' ? 3 * offBy : offBy;
