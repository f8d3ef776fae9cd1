import { camberFitErrors, type FitErrors, lineFitErrors } from '../../calc/survey/fit-errors.ts';
import { widening } from '../../calc/uncertainty/student-pair.ts';
import { type Plan, readingOf, type SurveyTable } from '../../plan/plan.ts';
import { figureName } from '../../plan/table-figures.ts';
import { tableNamed, weighedRows } from '../../plan/tables.ts';
import type { TableTemplate } from '../../plan/template.ts';
import type { Varied } from '../../studies/drivers/varied.ts';

/** The column that is read; the first of a table with a fit says where. */
const READ = 1;

const FITS = { line: lineFitErrors, circle: camberFitErrors } as const;

const isComplete = (row: readonly (number | null)[]): row is readonly number[] =>
  row.every((it) => it !== null);

/** Rows that formulas see, with their places in the table. */
const rowsInUse = (table: SurveyTable): readonly { readonly at: number; readonly row: readonly number[] }[] =>
  weighedRows(table).flatMap((row, at) => (isComplete(row) ? [{ at, row }] : []));

/** Rows whose fit says how far they may be off, which takes them all together. */
function together({ name }: TableTemplate, table: SurveyTable, { freedom, rows, least, most }: FitErrors) {
  const used = rowsInUse(table);
  return rows.flatMap(({ at, middle, by, deviation }): Varied[] => {
    const { at: row = -1, row: figures = [] } = used[at] ?? {};
    const called = figureName({ table: name, row, column: READ });
    if (called === undefined) return [];
    return [
      {
        name: called,
        value: figures[READ] ?? 0,
        offBy: deviation * widening(freedom),
        law: 'normal',
        whole: false,
        fit: {
          of: name,
          freedom,
          middle,
          by,
          ...(least === undefined ? {} : { least }),
          ...(most === undefined ? {} : { most }),
        },
      },
    ];
  });
}

/** Rows each of which is off by itself, by its own ±. */
function byItself({ name, columns, off_by: usual, fit }: TableTemplate, table: SurveyTable): Varied[] {
  const read = columns.flatMap((column, i) => (fit === undefined || i === READ ? [{ column, i }] : []));
  return rowsInUse(table).flatMap(({ at, row }) => {
    const note = table.notes?.[at];
    const own = note?.offBy ?? 0;
    return read.flatMap(({ column, i }): Varied[] => {
      const [called, value = 0] = [figureName({ table: name, row: at, column: i }), row[i]];
      // A thickness is not off by more than it is.
      const offBy = Math.min(own > 0 ? own : usual, value - column.min);
      if (called === undefined || offBy <= 0) return [];
      const law = own > 0 && note?.normal === true ? 'normal' : 'rectangular';
      return [{ name: called, value, offBy, law, whole: false }];
    });
  });
}

/** Whether shims and gaps take the face row by row, and not the line through it. */
const isFollowed = (plan: Plan, { name }: SurveyTable, scenario: string | null): boolean =>
  name === 'transom_readings' && readingOf(plan, 'follow_profile', scenario)?.value === true;

/** Every figure of the survey's tables that may be off, with how far. */
export const surveyErrors = (plan: Plan, scenario: string | null): Varied[] =>
  plan.tables.flatMap((table) => {
    const template = tableNamed(table.name);
    if (template === undefined) return [];
    const fit = template.fit === undefined ? undefined : FITS[template.fit];
    const errors = isFollowed(plan, table, scenario)
      ? undefined
      : fit?.(rowsInUse(table).map((it) => it.row));
    return errors === undefined ? byItself(template, table) : together(template, table, errors);
  });
