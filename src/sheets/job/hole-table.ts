import type { Hole, Holes } from '../../order/holes.ts';
import type { Marked } from '../../order/marked.ts';
import type { Units } from '../../plan/plan.ts';
import { formatNumber } from '../../units/format-number.ts';
import type { Sheet } from '../page/sheet.ts';
import { type Cell, type Column, headHeight, type Row, rowHeight, table } from '../page/table.ts';

const signed = (value: number): string => {
  const text = formatNumber(value, 'mm', 1).replace(' mm', '');
  return value > 0 && !text.startsWith('0.0') ? `+${text}` : text.replace(/^−0\.0$/, '0.0');
};

const whole = (value: number): string => formatNumber(value, 'mm', 0).replace(' mm', '');

/** What was added to or taken from the exact length to come to a mark on the tape, mm. */
const rounding = (it: Marked, units: Units): string =>
  units === 'mm'
    ? signed(it.mmOff)
    : units === 'in'
      ? signed(it.inchesOff)
      : `${signed(it.mmOff)}, ${signed(it.inchesOff)}`;

const value = (text: string): Cell => ({ text, style: 'value' });

const marks = (it: Marked, units: Units): Cell[] => [
  ...(units === 'in' ? [] : [value(whole(it.mm))]),
  ...(units === 'mm' ? [] : [value(it.inches)]),
  { text: rounding(it, units), style: 'small' },
];

const headed = (words: string, units: Units): Column[] => [
  ...(units === 'in'
    ? []
    : [{ head: `${words}, mm`, width: units === 'both' ? 17.5 : 24, align: 'right' as const }]),
  ...(units === 'mm'
    ? []
    : [
        {
          head: units === 'in' ? `${words}, in` : 'in',
          width: units === 'both' ? 15 : 24,
          align: 'right' as const,
        },
      ]),
  { head: 'rounded by, mm', width: 15.5, align: 'right' as const },
];

export const holeColumns = (units: Units): Column[] => [
  { head: 'No.', width: 7 },
  { head: 'Middle of the hole', share: 1, style: 'small' },
  { head: 'Side', width: 17 },
  ...headed('From centreline', units),
  ...headed('Up the face', units),
];

const row =
  (units: Units) =>
  (hole: Hole, i: number): Row => ({
    cells: [
      value(String(i + 1)),
      hole.name,
      { text: hole.side, style: 'small' },
      ...marks(hole.acrossFace, units),
      ...marks(hole.upFace, units),
    ],
  });

const notesOf = ({ notes, unanswered }: Holes): string =>
  [
    'Lay the tape level along the face from the centreline, and up the face from the waterline mark.',
    ...notes,
    ...unanswered,
  ].join(' ');

export function holeTableHeight(sheet: Sheet, holes: Holes, units: Units, width: number): number {
  const columns = holeColumns(units);
  const rows = holes.holes.map(row(units));
  return (
    headHeight(sheet, columns, width) +
    rows.reduce((sum, it) => sum + rowHeight(sheet, it, columns, width), 0) +
    sheet.textHeight(notesOf(holes), width, 'small') +
    2
  );
}

/** Every hole as one marks it, to the nearest mm and 1/32 in, with what the rounding adds; gives back the y under it. */
export function holeTable(
  sheet: Sheet,
  holes: Holes,
  units: Units,
  x: number,
  y: number,
  width: number,
): number {
  const foot =
    holes.holes.length === 0 ? y : table(sheet, holeColumns(units), holes.holes.map(row(units)), x, y, width);
  return sheet.text(notesOf(holes), x, foot + 1, { style: 'small', width }) + 1;
}
