import type { Ask } from '../../order/ask.ts';
import { boltSizeWords, inchBoltWords } from '../../order/bolt-words.ts';
import { type BoltOrder, boltOrder } from '../../order/bolts.ts';
import { feetInUse, type Place, placeWords } from '../../order/feet.ts';
import { stackOf } from '../../order/stack.ts';
import type { Units } from '../../plan/plan.ts';
import { lengthPieces } from '../../units/format-length.ts';
import type { Sheet } from '../page/sheet.ts';
import { type Column, type Row, table } from '../page/table.ts';

const columnsIn = (units: Units): readonly Column[] => [
  { head: 'Place', width: 22 },
  { head: 'Bolts', width: 8, align: 'right', style: 'value' },
  { head: 'Size', width: 25, style: 'label' },
  { head: `From outside to inside, ${units === 'in' ? 'in' : 'mm'}`, share: 1, style: 'small' },
];

/** The figure alone, where the head of the column has the unit. */
const bare = (mm: number, units: Units): string =>
  lengthPieces(mm, { unit: units === 'in' ? 'in' : 'mm' })[0]?.figure ?? '';

/** As it is sold, with the inch bolt to buy where metric ones are not. */
const sizeWords = (bolt: BoltOrder): string => `${boltSizeWords(bolt)}\nor ${inchBoltWords(bolt)}`;

const stackWords = (ask: Ask, bolt: BoltOrder, units: Units): string =>
  stackOf(ask, bolt)
    .map(([what, thick]) => (thick === undefined ? what : `${what} ${bare(thick, units)}`))
    .map((words, i) => (i === 0 ? words : words.charAt(0).toLowerCase() + words.slice(1)))
    .join(' · ');

/** Both feet carry the same bolts through the same layers. */
function placesOf(ask: Ask): readonly (readonly [place: Place, words: string])[] {
  const [first, second] = feetInUse(ask);
  const foot: readonly (readonly [Place, string])[] =
    first === undefined ? [] : [[first, second === undefined ? placeWords[first] : 'Each foot']];
  return [['lower', placeWords.lower], ...foot];
}

/** Through bolts by place, with everything on each from outside to inside; gives back the y under it. */
export function boltList(sheet: Sheet, ask: Ask, units: Units, x: number, y: number, width: number): number {
  const rows = placesOf(ask).map(([place, words]): Row => {
    const bolt = boltOrder(ask, place);
    return typeof bolt === 'string'
      ? { cells: [words, '', 'no answer', bolt] }
      : { cells: [words, String(bolt.count), sizeWords(bolt), stackWords(ask, bolt, units)] };
  });
  return table(sheet, columnsIn(units), rows, x, y, width);
}
