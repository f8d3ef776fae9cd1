import type { Session } from '../../../session/session.ts';
import { optionsOf } from '../../parts/options.ts';
import { isEditable } from '../row-look.ts';
import type { Place } from '../rows-state.ts';
import type { Listed } from './list-box.ts';

const optionsIn = ({ row, column }: Place) =>
  row.kind === 'book' && row.cell.kind !== 'result' && column === 'value' && isEditable(row, column)
    ? optionsOf(row.cell)
    : undefined;

/** What can be chosen in a cell of the table; undefined where it is typed, or follows other cells. */
export function listedIn(session: Session, place: Place): Listed | undefined {
  const options = optionsIn(place);
  if (options === undefined || place.row.kind !== 'book') return undefined;
  const { name, cell } = place.row;
  if (session.reading(name)?.formula !== undefined || session.plan.locked.has(name)) return undefined;
  const now = session.value(name);
  return {
    label: cell.label,
    words: options.map(([word]) => word),
    present: options.find(([, value]) => value === now)?.[0],
  };
}

/** Puts in what was chosen. */
export function pickListed(session: Session, place: Place, word: string): void {
  const option = optionsIn(place)?.find(([it]) => it === word);
  if (option !== undefined && place.row.kind === 'book') session.choose(place.row.name, option[1]);
}
