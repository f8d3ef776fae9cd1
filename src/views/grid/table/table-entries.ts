import type { Session } from '../../../session/session.ts';
import { SPOKEN } from '../columns.ts';
import { editText } from '../edit-text.ts';
import { keptText } from '../kept-text.ts';
import { put } from '../put.ts';
import type { Place, RowsState } from '../rows-state.ts';
import { whenUnitsClear } from '../when-units-clear.ts';
import type { Entries } from './entry-editor.ts';
import { reasonId } from './paint.ts';

/** Where the texts of a table's editor come from and go to; `onPut` hears whether one was taken. */
export function tableEntries(
  session: Session,
  state: RowsState,
  table: string,
  onPut: (taken: boolean) => void,
  onFill: (place: Place, typed: string) => void,
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
      // Where its unit is asked first the table goes on; a refusal is then told in the cell.
      let taken = true;
      if (!isAsBefore) {
        whenUnitsClear(session, [{ row, column, typed }], ([clear]) => {
          taken = clear === undefined || put(session, row, column, clear.typed).ok;
        });
      }
      onPut(taken);
    },
    fill: (at, columnNumber, typed) => {
      const place = state.place(at, columnNumber);
      if (place !== undefined) onFill(place, typed);
    },
  };
}
