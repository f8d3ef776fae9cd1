import type { Session } from '../../../session/session.ts';
import { COLUMNS } from '../columns.ts';
import { keptText } from '../kept-text.ts';
import type { GridRow } from '../rows.ts';
import { reasonId } from './paint.ts';

/** Fills an unseen element with the reason of every refused text, for the cells to point at. */
export function tellReasons(
  element: HTMLElement,
  session: Session,
  rows: readonly GridRow[],
  table: string,
): void {
  const sentences = rows.flatMap((row) =>
    COLUMNS.flatMap((column) => {
      const why = keptText(session, row, column)?.why;
      return why === undefined ? [] : [[reasonId(table, row, column), why] as const];
    }),
  );
  if (sentences.length === 0 && element.childElementCount === 0) return;
  element.replaceChildren(
    ...sentences.map(([id, why]) => {
      const sentence = element.ownerDocument.createElement('p');
      sentence.id = id;
      sentence.textContent = why;
      return sentence;
    }),
  );
}
