import type { Ask } from '../../order/ask.ts';
import { whyNotNested } from '../../order/strut-nest.ts';
import { type StrutOrder, strutOrder } from '../../order/struts.ts';
import { length } from '../../order/words.ts';
import type { Units } from '../../plan/plan.ts';
import { formatLength, lengthPieces } from '../../units/format-length.ts';
import { joinPiece } from '../../units/piece.ts';
import type { Sheet } from '../page/sheet.ts';
import { type Column, type Row, table } from '../page/table.ts';

const columns = (long: string): readonly Column[] => [
  { head: 'Tube', share: 1, style: 'small' },
  { head: `Cut first, ${long} long`, width: 24, align: 'right', style: 'small' },
  { head: 'Trim to about', width: 24, align: 'right', style: 'value' },
  { head: 'Cut', width: 6 },
];

const RULE = 'Measure between the hinge pins once every hole is drilled; trim to that, not to this list.';

/** Millimetres, and inches on a line of their own. */
const lengthLines = (mm: number, units: Units): string =>
  lengthPieces(mm, { unit: units }).map(joinPiece).join('\n');

function stockWords({ pieces, stock, nest }: StrutOrder, units: Units): string {
  const unit = units === 'in' ? 'in' : 'mm';
  const l = (mm: number): string => formatLength(mm, { unit });
  if (nest === undefined) return whyNotNested(pieces, stock, l).join(' ');
  const { tubes, spare, longTubes } = nest;
  const count = `${tubes.length} tube${tubes.length === 1 ? '' : 's'} of ${l(stock.supply)}`;
  const left = Math.max(...tubes.map((it) => it.left));
  const short = spare < 0 ? ` ${-spare} more than supplied.` : '';
  const enough = longTubes === 1 && spare > 0 ? ' One tube is enough.' : '';
  const rest =
    longTubes === undefined
      ? 'Cut that long, a strut is longer than a tube.'
      : longTubes > tubes.length
        ? `Cut that long, they take ${longTubes}.`
        : `Longest piece left: ${l(left)}, less what you cut long.`;
  return `Planned lengths take ${count}.${enough}${short} ${rest}`;
}

/** What to cut from the strut tubes; gives back the y under it. */
export function cutList(sheet: Sheet, ask: Ask, units: Units, x: number, y: number, width: number): number {
  const order = strutOrder(ask);
  if (typeof order === 'string') return sheet.text(`${order} ${RULE}`, x, y, { style: 'small', width });
  const rows = order.pieces.map(
    ({ name, cut, trial }): Row => ({
      cells: [name, lengthLines(trial, units), lengthLines(cut, units), { tick: true }],
    }),
  );
  // Each is first cut as long as its trial tube.
  const long = Math.max(...order.pieces.map((it) => it.trial - it.cut));
  const foot = table(sheet, columns(length(long, units === 'in' ? 'in' : 'mm')), rows, x, y, width);
  return sheet.text(`${stockWords(order, units)} ${RULE}`, x, foot + 0.8, { style: 'small', width });
}
