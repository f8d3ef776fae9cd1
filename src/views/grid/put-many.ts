import { setReading } from '../../plan/edit.ts';
import { type Plan, readingOf } from '../../plan/plan.ts';
import type { InputCell } from '../../plan/template.ts';
import type { Session } from '../../session/session.ts';
import { enterText } from '../../workbook/enter.ts';
import type { Column } from './columns.ts';
import { put } from './put.ts';
import type { GridRow } from './rows.ts';

/** A text for one cell of the table. */
export interface Entry {
  readonly row: GridRow;
  readonly column: Column;
  readonly typed: string;
}

export interface Outcome {
  readonly taken: number;
  readonly refused: number;
}

const inputOf = ({ row, column }: Entry): InputCell | undefined =>
  row.kind === 'book' && row.cell.kind !== 'result' && column === 'value' ? row.cell : undefined;

/** The plan with one text put in, or undefined when that text is refused. */
function withEntry(plan: Plan, entry: Entry): Plan | undefined {
  const cell = inputOf(entry);
  if (cell === undefined) return undefined;
  const bare = plan.units === 'in' ? 'in' : 'mm';
  const entered = enterText(cell, entry.typed, bare, plan, readingOf(plan, cell.name));
  if (!entered.ok) return undefined;
  const edited = setReading(plan, cell.name, entered.reading);
  return edited.ok ? edited.plan : undefined;
}

/**
 * Puts texts into several cells. Those that can be taken are one step of undo; a text that is refused while others
 * have not arrived yet gets a second chance after them. What is refused is put in alone, so that it stays as typed
 * with its reason; so are cells that are no input's value.
 */
export const putMany = (session: Session, entries: readonly Entry[]): Outcome =>
  session.asOne(() => putAll(session, entries));

function putAll(session: Session, entries: readonly Entry[]): Outcome {
  const [only] = entries;
  if (only !== undefined && entries.length === 1) {
    const done = put(session, only.row, only.column, only.typed);
    return done.ok ? { taken: 1, refused: 0 } : { taken: 0, refused: 1 };
  }
  let { plan } = session;
  let waiting = entries;
  for (let before = -1; before !== waiting.length; ) {
    before = waiting.length;
    waiting = waiting.filter((entry) => {
      const next = withEntry(plan, entry);
      if (next !== undefined) plan = next;
      return next === undefined;
    });
  }
  let taken = entries.length - waiting.length;
  if (taken > 0) session.edit(`${taken} values`, () => ({ ok: true, plan }));
  for (const { row, column, typed } of waiting) if (put(session, row, column, typed).ok) taken++;
  return { taken, refused: entries.length - taken };
}
