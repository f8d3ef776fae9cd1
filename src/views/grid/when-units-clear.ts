import type { Session } from '../../session/session.ts';
import { bareOf, doubtIn } from '../../session/unit-question/enter-clear.ts';
import { inUnit } from '../../session/unit-question/unit-doubt.ts';
import { leftWhy, unitQuestionsOf } from '../../session/unit-question/unit-questions.ts';
import type { Entry } from './put-many.ts';

const isLength = ({ row, column }: Entry): boolean =>
  row.kind === 'book' &&
  row.cell.kind !== 'result' &&
  row.cell.unit === 'mm' &&
  (column === 'value' || column === 'offBy');

/** Puts texts in once it is clear which unit their lengths are in: one question for all; whether it has to be asked. */
export function whenUnitsClear(
  session: Session,
  entries: readonly Entry[],
  put: (entries: readonly Entry[]) => void,
): boolean {
  const meant = bareOf(session);
  const doubted = entries.flatMap(({ row, column, typed }) => {
    if (row.kind !== 'book' || row.cell.kind === 'result' || column !== 'value') return [];
    const doubt = doubtIn(session, row.cell, typed);
    return doubt === undefined ? [] : [{ name: row.name, typed, doubt }];
  });
  return unitQuestionsOf(session).whenClear({
    typed: entries.filter(isLength).map((it) => it.typed),
    doubts: doubted.map((it) => it.doubt),
    meant,
    put: (unit) =>
      put(
        unit === meant
          ? entries
          : entries.map((it) => (isLength(it) ? { ...it, typed: inUnit(it.typed, unit) } : it)),
      ),
    leave: () => {
      for (const { name, typed, doubt } of doubted) session.refuse(name, typed, leftWhy(doubt));
    },
  });
}
