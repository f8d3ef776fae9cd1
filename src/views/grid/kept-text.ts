import { type KeptDrafts, keptDraftsOf } from '../../session/kept-drafts.ts';
import type { Session } from '../../session/session.ts';
import type { Column } from './columns.ts';
import type { GridRow } from './rows.ts';

/** A text that was refused: kept as typed, with the reason. */
export type KeptText = NonNullable<ReturnType<KeptDrafts['get']>>;

/** Under which a refused text of a cell is kept; how far a reading is off shares its key with the form. */
const keyOf = (row: GridRow, column: Column): string | undefined => {
  if (row.kind === 'new') return 'new own cell';
  if (row.kind !== 'book' && row.kind !== 'own') return undefined;
  return column === 'offBy' ? `off by ${row.name}` : `own ${column} ${row.name}`;
};

const isInputValue = (row: GridRow, column: Column): row is Extract<GridRow, { kind: 'book' }> =>
  row.kind === 'book' && column === 'value';

/** The refused text that stands in a cell, if one does: the session keeps those of inputs. */
export function keptText(session: Session, row: GridRow, column: Column): KeptText | undefined {
  if (isInputValue(row, column)) return session.draft(row.name);
  const key = keyOf(row, column);
  return key === undefined ? undefined : keptDraftsOf(session).get(key);
}

/** Keeps a refused text for a cell whose drafts the session does not keep itself. */
export function keepText(session: Session, row: GridRow, column: Column, typed: string, why: string): void {
  const key = keyOf(row, column);
  if (key !== undefined && !isInputValue(row, column)) keptDraftsOf(session).keep(key, typed, why);
}

/** Drops a refused text, so that the last good value is shown again. */
export function dropText(session: Session, row: GridRow, column: Column): void {
  if (isInputValue(row, column)) session.dropDraft(row.name);
  const key = keyOf(row, column);
  if (key !== undefined) keptDraftsOf(session).drop(key);
}

/** Hears of every change to what a row stands on. */
export function subscribeToRows(session: Session, listener: () => void): () => void {
  const stops = [session.subscribe(listener), keptDraftsOf(session).subscribe(listener)];
  return () => {
    for (const stop of stops) stop();
  };
}
