import type { Session } from '../../../session/session.ts';
import { dropText, keptText } from '../kept-text.ts';
import { isEditable } from '../row-look.ts';
import { isCellRow } from '../rows.ts';
import type { Place } from '../rows-state.ts';
import type { Keys } from './keys.ts';

interface Ways {
  readonly explain: () => void;
  readonly top: (inColumn: boolean) => void;
  readonly fill: () => void;
  readonly fillDown: () => void;
  readonly list: () => boolean;
}

/** What the keys do to the chosen cell. */
export function tableKeys(
  session: Session,
  chosen: () => Place | undefined,
  { explain, ...ways }: Ways,
): Keys {
  return {
    ...ways,
    undo: () => session.undo(),
    redo: () => session.redo(),
    explain: () => {
      const row = chosen()?.row;
      if (isCellRow(row)) explain();
    },
    flip: () => {
      const now = chosen();
      if (now?.row.kind !== 'book' || now.column !== 'value') return false;
      const { cell, name } = now.row;
      if (cell.kind === 'result' || cell.type !== 'flag') return false;
      session.choose(name, session.value(name) !== true);
      return true;
    },
    drop: () => {
      const now = chosen();
      if (now === undefined || keptText(session, now.row, now.column) === undefined) return false;
      dropText(session, now.row, now.column);
      return true;
    },
    isEditable: () => {
      const now = chosen();
      return now !== undefined && isEditable(now.row, now.column);
    },
  };
}
