import type { Session } from '../../../session/session.ts';
import { SPOKEN } from '../columns.ts';
import { editText } from '../edit-text.ts';
import { keptText } from '../kept-text.ts';
import { put } from '../put.ts';
import type { RowsState } from '../rows-state.ts';
import type { Entries } from './entry-editor.ts';
import { reasonId } from './paint.ts';

/** Where the texts of a table's editor come from and go to; `onPut` hears whether one was taken. */
export function tableEntries(
  session: Session,
  state: RowsState,
  table: string,
  onPut: (taken: boolean) => void,
): Entries {
  return {
    text: (at, columnNumber) => {
      const place = state.place(at, columnNumber);
      return place === undefined ? '' : editText(place.row, place.column, place.facts);
    },
    label: (at, columnNumber) => {
      const place = state.place(at, columnNumber);
      if (place === undefined) return 'Value';
      const { row, column, facts } = place;
      if (row.kind === 'new') return 'Name of a new cell';
      const name = row.kind === 'book' ? row.cell.label : (facts.own?.label ?? '');
      return `${name}, ${SPOKEN[column].toLowerCase()}`;
    },
    reason: (at, columnNumber) => {
      const place = state.place(at, columnNumber);
      if (place === undefined || keptText(session, place.row, place.column) === undefined) return undefined;
      return reasonId(table, place.row, place.column);
    },
    put: (at, columnNumber, typed) => {
      const place = state.place(at, columnNumber);
      if (place === undefined) return;
      const { row, column, facts } = place;
      // Leaving a text as it was is no edit; a refused one is tried again, for its neighbours may have changed.
      const isAsBefore =
        typed === editText(row, column, facts) && keptText(session, row, column) === undefined;
      onPut(isAsBefore || put(session, row, column, typed).ok);
    },
  };
}
