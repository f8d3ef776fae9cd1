import type { TableTemplate } from '../../plan/template.ts';
import type { Session } from '../../session/session.ts';
import { type Bare, unitDoubt } from '../../session/unit-question/unit-doubt.ts';
import { leftWhy, unitQuestionsOf } from '../../session/unit-question/unit-questions.ts';

interface Figure {
  readonly column: number;
  readonly typed: string;
}

/** Puts a table's figures in once it is clear which unit those without one are in: one question for all. */
export function whenFiguresClear(
  session: Session,
  table: TableTemplate,
  figures: readonly Figure[],
  meant: Bare,
  {
    put,
    leave,
  }: {
    readonly put: (unit: Bare) => void /** Nothing is put in, for this reason. */;
    readonly leave: (why: string) => void;
  },
): void {
  const doubts = figures.flatMap(({ column, typed }) => {
    const it = table.columns[column];
    if (it === undefined) return [];
    const { name, label, unit, usual } = it;
    const doubt = unitDoubt({ key: `${table.name}.${name}`, label, unit, usual }, typed, meant);
    return doubt === undefined ? [] : [doubt];
  });
  unitQuestionsOf(session).whenClear({
    typed: figures.map((it) => it.typed),
    doubts,
    meant,
    put,
    leave: () => {
      if (doubts[0] !== undefined) leave(leftWhy(doubts[0]));
    },
  });
}
