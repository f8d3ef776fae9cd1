import { degrees } from '../../calc/angle.ts';
import { NoAnswer } from '../../calc/answer.ts';
import { lineFitErrors } from '../../calc/survey/fit-errors.ts';
import { levelledSlope, trimAngle } from '../../calc/survey/lie.ts';
import { fitLine } from '../../calc/survey/line.ts';
import { combined, effectiveFreedom, type Part } from '../../calc/uncertainty/law.ts';
import { studentFactor } from '../../calc/uncertainty/student.ts';
import { inputNamed } from '../../plan/book.ts';
import type { InputName } from '../../plan/names.ts';
import { type Plan, readingOf } from '../../plan/plan.ts';
import { surveyTable, weighedRows } from '../../plan/tables.ts';
import { standardOf } from '../../studies/uncertain/reading-error.ts';

/** A number with its standard deviation. */
interface Known {
  readonly value: number;
  readonly deviation: number;
  readonly freedom?: number | undefined;
}

function read(plan: Plan, name: InputName): Known {
  const reading = readingOf(plan, name, null);
  const value = typeof reading?.value === 'number' ? reading.value : 0;
  const offBy = reading?.offBy ?? inputNamed(name)?.off_by ?? 0;
  return { value, deviation: standardOf({ offBy, law: reading?.normal ? 'normal' : 'rectangular' }) };
}

/** The slope of the rows as read, degrees. */
function slopeRead(plan: Plan): Known | undefined {
  const rows = weighedRows(surveyTable(plan, 'transom_readings')).filter((row): row is readonly number[] =>
    row.every((it) => it !== null),
  );
  const line = fitLine(rows);
  const errors = lineFitErrors(rows);
  if (line instanceof NoAnswer || errors === undefined) return undefined;
  const squares = errors.rows.reduce((sum, { by }) => sum + by[1] ** 2, 0);
  const spread = rows.reduce((sum, [height = 0]) => sum + (height - line.middle) ** 2, 0);
  return {
    value: degrees(Math.atan(-line.slope)),
    deviation: degrees(Math.sqrt(squares / spread) / (1 + line.slope ** 2)),
    freedom: errors.freedom ?? undefined,
  };
}

/** Part of a deviation over which a slope is taken. */
const STEP = 1e-3;

/**
 * How far the rake from the plumb line may be off with 95 %, degrees: the scatter of its rows, the waterline marks and
 * the list together, by Student's law with the degrees of freedom of all (JCGM 100:2008, G.4.1). Undefined while no
 * line goes through the rows.
 */
export function rakeWithin(plan: Plan): number | undefined {
  const slope = slopeRead(plan);
  if (slope === undefined) return undefined;
  const known = [
    slope,
    read(plan, 'trim_mark_stern'),
    read(plan, 'trim_mark_forward'),
    read(plan, 'trim_mark_span'),
    read(plan, 'list_reading'),
  ];
  const rakeAt = ([seen = 0, stern = 0, forward = 0, span = 0, list = 0]: readonly number[]): number =>
    levelledSlope(seen, trimAngle(stern, forward, span), list);
  const values = known.map((it) => it.value);
  const parts = known.map(({ value, deviation, freedom }, i): Part => {
    const step = STEP * deviation;
    const change = rakeAt(values.with(i, value + step)) - rakeAt(values.with(i, value - step));
    return { part: step === 0 ? 0 : (change / (2 * step)) * deviation, freedom };
  });
  const all = combined(parts);
  return studentFactor(0.95, effectiveFreedom(parts, all)) * all;
}
