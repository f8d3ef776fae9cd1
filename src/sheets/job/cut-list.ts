import { type Ask, numberOf } from '../../order/ask.ts';
import { feetInUse } from '../../order/feet.ts';
import type { Units } from '../../plan/plan.ts';
import { formatLength, lengthPieces } from '../../units/format-length.ts';
import { joinPiece } from '../../units/piece.ts';
import type { Answer } from '../../workbook/engine.ts';
import type { Sheet } from '../page/sheet.ts';
import { type Column, type Row, table } from '../page/table.ts';

/** How much longer than planned a tube is cut first, mm. */
const LONG = 20;

const words: Readonly<Record<string, string>> = {
  port: 'Port strut',
  starboard: 'Starboard strut',
  single: 'Single strut',
};

const COLUMNS: readonly Column[] = [
  { head: 'Tube', share: 1, style: 'small' },
  { head: `Cut first, ${LONG} mm long`, width: 24, align: 'right', style: 'small' },
  { head: 'Trim to about', width: 24, align: 'right', style: 'value' },
  { head: 'Cut', width: 6 },
];

/** Millimetres, and inches on a line of their own. */
const lengthLines = (mm: number, units: Units): string =>
  lengthPieces(mm, { unit: units, fraction: 32 }).map(joinPiece).join('\n');

function stockWords(ask: Ask, units: Units, count: number): string {
  const tubes = numberOf(ask, 'strut_tubes_needed');
  const supply = numberOf(ask, 'strut_supply_length');
  const offcut = numberOf(ask, 'strut_offcut');
  if (tubes === undefined || supply === undefined) return 'How many tubes this takes has no answer yet.';
  const left =
    offcut === undefined
      ? ''
      : ` The longest piece left over is ${formatLength(offcut, { unit: units === 'in' ? 'in' : 'mm' })}.`;
  const from = `From ${tubes} tube${tubes === 1 ? '' : 's'} of ${formatLength(supply, { unit: units })}.`;
  return `${from}${tubes === 1 && count > 1 ? ' One tube is enough: cut the longer piece first.' : ''}${left} Measure between the hinge pins once every hole is drilled; trim to that, not to this list.`;
}

/** What to cut from the strut tubes; gives back the y under it. */
export function cutList(
  sheet: Sheet,
  answer: (name: string) => Answer,
  units: Units,
  x: number,
  y: number,
  width: number,
): number {
  const ask: Ask = (name) => answer(name).value;
  const rows = feetInUse(ask).map((foot): Row => {
    const { value, why } = answer(`${foot}_strut_cut`);
    if (typeof value !== 'number')
      return {
        cells: [words[foot] ?? foot, why ?? 'no answer', 'no answer', { tick: true }],
      };
    return {
      cells: [
        words[foot] ?? foot,
        lengthLines(value + LONG, units),
        lengthLines(value, units),
        { tick: true },
      ],
    };
  });
  const foot = rows.length === 0 ? y : table(sheet, COLUMNS, rows, x, y, width);
  return sheet.text(stockWords(ask, units, rows.length), x, foot + 0.8, { style: 'small', width });
}
