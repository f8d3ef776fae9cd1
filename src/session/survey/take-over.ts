import { setReading } from '../../plan/edit/reading.ts';
import { type Plan, readingOf, type Value } from '../../plan/plan.ts';
import { surveyTable } from '../../plan/tables.ts';
import type { Session } from '../session.ts';

/** A reading of the boat that may follow a result of the survey. */
export interface TakeOver {
  /** The input that takes it, and the result it then follows. */
  readonly name: string;
  readonly from: string;
  /** What must have been measured first: so many complete rows of a table, or an input that is a reading. */
  readonly rows?: readonly [table: string, least: number];
  readonly reading?: string;
  /** What it was measured with. */
  readonly with: string;
  /** The result that is its standard error. */
  readonly error?: string;
}

const RUDDER: TakeOver['rows'] = ['rudder_readings', 2];

export const TAKE_OVERS: readonly TakeOver[] = [
  {
    name: 'transom_rake',
    from: 'survey_rake',
    rows: ['transom_readings', 2],
    with: 'plumb line',
    error: 'survey_rake_error',
  },
  { name: 'transom_rake', from: 'level_rake', reading: 'rake_reading', with: 'level' },
  {
    name: 'transom_camber_radius',
    from: 'survey_camber_radius',
    rows: ['camber_readings', 1],
    with: 'straightedge',
  },
  { name: 'transom_top', from: 'survey_top', reading: 'top_reading', with: 'tape' },
  { name: 'transom_bottom', from: 'survey_bottom', reading: 'bottom_reading', with: 'tape' },
  { name: 'rudder_overhang', from: 'survey_overhang_head', rows: RUDDER, with: 'plumb line' },
  { name: 'rudder_overhang_foot', from: 'survey_overhang_foot', rows: RUDDER, with: 'plumb line' },
  { name: 'main_rudder_head', from: 'survey_rudder_head', reading: 'rudder_head_reading', with: 'tape' },
  { name: 'main_rudder_foot', from: 'survey_rudder_foot', reading: 'rudder_foot_reading', with: 'tape' },
];

const complete = (plan: Plan, table: string): number =>
  surveyTable(plan, table).rows.filter((row) => row.every((cell) => cell !== null)).length;

/** Whether what it rests on has been measured: nobody's boat follows a stand-in. */
const isMeasured = (plan: Plan, { rows, reading }: TakeOver): boolean =>
  (rows === undefined || complete(plan, rows[0]) >= rows[1]) &&
  (reading === undefined || readingOf(plan, reading)?.origin === 'reading');

/** What an input can follow now, the better first; undefined when nothing was measured for it, or it follows already. */
export function takeOverFor(plan: Plan, name: string): TakeOver | undefined {
  const first = TAKE_OVERS.find((it) => it.name === name && isMeasured(plan, it));
  return first === undefined || readingOf(plan, name)?.formula === `=${first.from}` ? undefined : first;
}

/** Makes an input follow the survey: its reading keeps its own formula, and the standard error where there is one. */
export function takeOver(session: Session, it: TakeOver, label: string): void {
  const before = session.reading(it.name);
  const error: Value = it.error === undefined ? null : session.value(it.error);
  const formula = `=${it.from}`;
  session.edit(`${label} from the survey`, (plan) =>
    setReading(plan, it.name, {
      ...(before?.who === undefined ? {} : { who: before.who }),
      ...(before?.note === undefined ? {} : { note: before.note }),
      ...(typeof error === 'number' && error > 0
        ? { offBy: error, normal: true }
        : before?.offBy === undefined
          ? {}
          : { offBy: before.offBy }),
      value: null,
      formula,
      typed: formula,
      origin: 'reading',
      with: it.with,
    }),
  );
}
