import { type Cautions, holeCautions, stopWords } from '../../order/cautions.ts';
import type { Hole, Holes } from '../../order/holes.ts';
import type { Marked } from '../../order/marked.ts';
import { signed } from '../../order/words.ts';
import type { Units } from '../../plan/plan.ts';
import { formatNumber } from '../../units/format-number.ts';
import type { Sheet } from '../page/sheet.ts';
import { stopPlate, stopPlateHeight } from '../page/stop-plate.ts';
import { type Cell, type Column, headHeight, type Row, rowHeight, table } from '../page/table.ts';

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
  (hole: Hole): Row => ({
    cells: [
      value(String(hole.number)),
      hole.name,
      { text: hole.side, style: 'small' },
      ...marks(hole.acrossFace, units),
      ...marks(hole.upFace, units),
    ],
  });

/** The holes with what whoever drills them must know. */
export interface HoleTable {
  readonly holes: Holes;
  readonly units: Units;
  readonly cautions: Cautions;
  readonly drills: readonly string[];
}

const notesOf = ({ holes: { notes, unanswered }, drills }: HoleTable): string =>
  [
    'Lay the tape level along the face from the centreline, and up the face from the waterline mark.',
    ...notes,
    ...unanswered,
    ...drills.slice(0, 1),
  ].join(' ');

export function holeTableHeight(sheet: Sheet, it: HoleTable, width: number): number {
  const columns = holeColumns(it.units);
  const rows = it.holes.holes.map(row(it.units));
  const stop = stopWords(it.cautions, 'sheet');
  return (
    (stop === undefined ? 0 : stopPlateHeight(sheet, stop, width)) +
    headHeight(sheet, columns, width) +
    rows.reduce((sum, its) => sum + rowHeight(sheet, its, columns, width), 0) +
    holeCautions(it.cautions).reduce((sum, words) => sum + sheet.textHeight(words, width, 'label'), 0) +
    sheet.textHeight(notesOf(it), width, 'small') +
    2
  );
}

/**
 * Every hole as one marks it, to the nearest mm and 1/32 in, with what the rounding adds, and with what stops the work or
 * is to be read first; gives back the y under it.
 */
export function holeTable(sheet: Sheet, it: HoleTable, x: number, y: number, width: number): number {
  const { units, cautions } = it;
  const { holes } = it.holes;
  const stop = stopWords(cautions, 'sheet');
  const top = stop === undefined ? y : stopPlate(sheet, stop, x, y, width);
  let at = holes.length === 0 ? top : table(sheet, holeColumns(units), holes.map(row(units)), x, top, width);
  at += 1;
  for (const words of holeCautions(cautions)) at = sheet.text(words, x, at, { style: 'label', width });
  return sheet.text(notesOf(it), x, at, { style: 'small', width }) + 1;
}
