import type { Session } from '../../../session/session.ts';
import { moveOver } from '../moves.ts';
import type { RowsState } from '../rows-state.ts';
import { chosenAt, chosenPlace, type Hot } from './chosen.ts';
import { openList } from './list-box.ts';
import { listedIn, pickListed } from './listed.ts';

/** Opens the list of the chosen cell over it; whether it has one. After a pick the choice goes on to the next row. */
export function listOver(frame: HTMLElement, hot: Hot, session: Session, state: RowsState): boolean {
  const [place, where] = [chosenPlace(hot, state), chosenAt(hot)];
  const listed = place === undefined ? undefined : listedIn(session, place);
  const td = where === undefined ? null : hot.getCell(where.at, where.columnNumber);
  if (place === undefined || where === undefined || listed === undefined || td === null) return false;
  openList(frame, td, listed, {
    onPick: (word) => pickListed(session, place, word),
    onClose: ({ byKey, picked }) => {
      if (!byKey) return;
      hot.selectCell(where.at + (picked ? moveOver(state.rows, where.at, 1) : 0), where.columnNumber);
    },
  });
  return true;
}
