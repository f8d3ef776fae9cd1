import { setReading } from '../../plan/edit/reading.ts';
import { type Plan, readingOf } from '../../plan/plan.ts';
import { surveyTable } from '../../plan/tables.ts';
import type { Session } from '../session.ts';
import { TAKE_OVERS, type TakeOver } from './take-overs.ts';

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

/** Makes an input follow the survey: its reading keeps its own formula, and what the survey says of how far off it is. */
export function takeOver(session: Session, it: TakeOver, label: string): void {
  const before = session.reading(it.name);
  const within = it.within?.(session.plan) ?? before?.offBy;
  const formula = `=${it.from}`;
  session.edit(`${label} from the survey`, (plan) =>
    setReading(plan, it.name, {
      ...(before?.who === undefined ? {} : { who: before.who }),
      ...(before?.note === undefined ? {} : { note: before.note }),
      ...(within === undefined ? {} : { offBy: within }),
      value: null,
      formula,
      typed: formula,
      origin: 'reading',
      with: it.with,
    }),
  );
}
