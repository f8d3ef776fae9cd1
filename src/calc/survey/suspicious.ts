import { NoAnswer } from '../answer.ts';
import { record, type Table } from '../record.ts';
import { fitLine } from './line.ts';
import { studentTails } from './student.ts';

/** A row that does not go with the rest. */
export interface Suspect {
  /** Its place among the rows in use, from 0. */
  readonly at: number;
  /** How far it is off the line through all rows, in the table's unit. */
  readonly off: number;
  /** Its residual over the standard deviation that the other rows leave it. */
  readonly studentised: number;
}

/**
 * Rows that a line wants, so that one read wrong is found: with readings within 3 mm, a slip of 20 mm is pointed out nine
 * times in ten with six rows, and about once in eight with four.
 */
export const ROWS_WANTED = 6;

/** A row is pointed out when chance alone would make the worst of so many rows stand out like this less often. */
const SELDOM = 0.05;

/**
 * Rows whose externally studentised residual is far outside the rest: the two-sided chance of Student's distribution,
 * times the number of rows (Bonferroni), is under one in twenty. A row off by no more than a reading may be is never
 * pointed out, however well the others agree. Fewer than four rows tell nothing.
 */
export function suspiciousRows(rows: Table, offBy: number): readonly Suspect[] {
  const line = fitLine(rows);
  if (line instanceof NoAnswer || line.count < 4) return [];
  const { count, middle, spread, residuals, residualSquares, weights } = line;
  const freedom = count - 3;
  return residuals.flatMap((off, at): Suspect[] => {
    const away = (rows[at]?.[0] ?? 0) - middle;
    const weight = weights[at] ?? 1;
    const free = 1 - weight * (1 / count + (away * away) / spread);
    const mayBe = Math.max(offBy, rows[at]?.[2] ?? 0);
    const weighed = off * Math.sqrt(weight);
    // A row that alone holds one end of the line has no residual of its own.
    if (!(free > 1e-12) || !(Math.abs(off) > mayBe)) return [];
    const others = Math.max(0, residualSquares - (weighed * weighed) / free) / freedom;
    const studentised = weighed / Math.sqrt(Math.max(others, Number.MIN_VALUE) * free);
    return studentTails(studentised, freedom) * count < SELDOM ? [{ at, off, studentised }] : [];
  });
}

export const suspiciousRowsRecord = record({
  id: 'SUSPICIOUS_ROWS',
  title: 'Rows that do not go with the rest',
  arguments: [
    { name: 'readings', unit: 'mm', meaning: 'The readings, rows of height and distance', type: 'table' },
    { name: 'off_by', unit: 'mm', meaning: 'How far a reading may be off', least: 0 },
  ],
  unit: '–',
  formula:
    'how many rows have a studentised residual that chance gives less than once in twenty, and are off by more than a reading may be',
  source: "Student's t of the externally studentised residual, Bonferroni over the rows",
  example: {
    given: [
      [
        [0, 0],
        [100, 10.2],
        [200, 19.9],
        [300, 30.1],
        [400, 60],
        [500, 49.8],
        [600, 60.1],
      ],
      3,
    ],
    answer: 1,
    tolerance: 0,
    source: 'by eye: six rows lie on a slope of one in ten, the fifth is 20 mm off it',
  },
  run: (rows: Table, offBy: number) => suspiciousRows(rows, offBy).length,
});
