import { NoAnswer } from '../answer.ts';
import type { Table } from '../record.ts';
import { bySagitta, sagitta, surveyCamber } from './camber.ts';
import { fitLine, lineErrors, weightsOf } from './line.ts';

/** How one row moves as what is fitted through its table is off. */
export interface RowError {
  /** Its place among the rows. */
  readonly at: number;
  /** Its figure where nothing is off, and what one deviation of each of two independent errors of the fit adds. */
  readonly middle: number;
  readonly by: readonly [number, number];
  /** Standard deviation of the row by itself. */
  readonly deviation: number;
}

/** How far what is fitted through the rows of a table may be off. */
export interface FitErrors {
  /** Degrees of freedom of the scatter that tells it; null where it does not, and the rows' own ± has to serve. */
  readonly freedom: number | null;
  readonly rows: readonly RowError[];
  /** Deviations of the first error that it cannot pass. */
  readonly least?: number;
  readonly most?: number;
}

/** Rows that lie this close to what is fitted, mm, were hardly read so well: their scatter tells nothing. */
const NO_SCATTER = 0.05;
const ROOT_3 = Math.sqrt(3);

/** The deviation of a row of weight 1 that the rows' own ± say, half-widths of rectangles. */
function ownDeviation(rows: Table, weights: readonly number[]): number {
  const squares = rows.map((row, i) => ((row[2] ?? 0) / ROOT_3) ** 2 * (weights[i] ?? 1));
  return Math.sqrt(squares.reduce((sum, it) => sum + it, 0) / rows.length);
}

/**
 * How far the straight line through plumbed rows may be off: it comes nearer or goes further as a whole, and turns
 * about the middle of its rows, independently of one another. By the scatter of its rows, n − 2 degrees of freedom;
 * by their own ± where there are two rows, or all lie on the line. Undefined when no line goes through them.
 */
export function lineFitErrors(rows: Table): FitErrors | undefined {
  const line = fitLine(rows);
  if (line instanceof NoAnswer) return undefined;
  const { count, middle, spread, weights } = line;
  const errors = lineErrors(line);
  const isTold = !(errors instanceof NoAnswer) && errors.deviation > NO_SCATTER;
  const deviation = isTold ? errors.deviation : ownDeviation(rows, weights);
  return {
    freedom: isTold ? count - 2 : null,
    rows: rows.map(([height = 0, distance = 0], at) => ({
      at,
      middle: distance,
      by: [deviation / Math.sqrt(count), (deviation * (height - middle)) / Math.sqrt(spread)],
      deviation: deviation / Math.sqrt(weights[at] ?? 1),
    })),
  };
}

/** The sharpest curve that is drawn, as a part of the sharpest that a gap can say. */
const SHARPEST = 0.9;

/**
 * How far the circle through gaps under a straightedge may be off: all gaps grow or shrink together, n − 1 degrees of
 * freedom, and none turns hollow. Undefined when no circle fits.
 */
export function camberFitErrors(rows: Table): FitErrors | undefined {
  const radius = surveyCamber(rows);
  if (radius instanceof NoAnswer) return undefined;
  const curve = radius === 0 ? 0 : 1 / radius;
  const all = weightsOf(rows);
  const used = rows.flatMap(([out = 0, gap = 0], at) => {
    const half = Math.abs(out);
    return half > 0 ? [{ at, half, gap, weight: all[at] ?? 1, by: bySagitta(curve, half) }] : [];
  });
  const sum = (of: (it: (typeof used)[number]) => number): number =>
    used.reduce((total, it) => total + of(it), 0);
  const scatter = Math.sqrt(
    sum(({ weight, gap, half }) => weight * (gap - sagitta(curve, half)) ** 2) / (used.length - 1),
  );
  const isTold = used.length > 1 && scatter > NO_SCATTER;
  const deviation = isTold ? scatter : ownDeviation(rows, all);
  const ofCurve = deviation / Math.sqrt(sum(({ weight, by }) => weight * by * by));
  const widest = Math.max(...used.map((it) => it.half));
  return {
    freedom: isTold ? used.length - 1 : null,
    least: -curve / ofCurve,
    most: (SHARPEST / widest - curve) / ofCurve,
    rows: used.map(({ at, half, weight }) => ({
      at,
      middle: sagitta(curve, half),
      // Along the chord from a flat face to this one, so that no curve at all comes out as flat to the last digit.
      by: [ofCurve * (curve === 0 ? (half * half) / 2 : sagitta(curve, half) / curve), 0],
      deviation: deviation / Math.sqrt(weight),
    })),
  };
}
