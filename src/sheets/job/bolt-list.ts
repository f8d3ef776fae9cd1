import type { Ask } from '../../order/ask.ts';
import { numberOf } from '../../order/ask.ts';
import { feetInUse } from '../../order/feet.ts';
import type { Units } from '../../plan/plan.ts';
import { formatLength, lengthPieces } from '../../units/format-length.ts';
import type { Answer } from '../../workbook/engine.ts';
import type { Sheet } from '../page/sheet.ts';
import { type Column, type Row, table } from '../page/table.ts';

const columnsIn = (units: Units): readonly Column[] => [
  { head: 'Place', width: 22 },
  { head: 'Bolts', width: 9, align: 'right', style: 'value' },
  { head: 'Size and length', width: 22, style: 'value' },
  { head: 'Clamps', width: 15, align: 'right' },
  { head: `From outside to inside, ${units === 'in' ? 'in' : 'mm'}`, share: 1, style: 'small' },
];

const short = (mm: number, units: Units): string => formatLength(mm, { unit: units === 'in' ? 'in' : 'mm' });

/** The figure alone, where the head of the column has the unit. */
const bare = (mm: number, units: Units): string =>
  lengthPieces(mm, { unit: units === 'in' ? 'in' : 'mm' })[0]?.figure ?? '';

/** What the bolt passes, outside first: layers of no thickness are left out. */
function stackOf(ask: Ask, units: Units, packing: readonly (readonly [string, string])[]): string {
  const layers = [
    ['flange', 'flange_thickness'],
    ...packing,
    ['transom', 'transom_thickness'],
    ['epoxy bed', 'bed_thickness'],
    ['plate', 'plate_thickness'],
  ] as const;
  const passed = layers.flatMap(([word, name]) => {
    const mm = numberOf(ask, name);
    return mm === undefined ? [`${word} (no answer)`] : mm > 0 ? [`${word} ${bare(mm, units)}`] : [];
  });
  return ['head, washer', ...passed, 'washer, nut'].join(' · ');
}

function sizeWords(ask: Ask, { value, why }: Answer): string {
  const diameter = numberOf(ask, 'bolt_diameter');
  if (typeof value !== 'number' || diameter === undefined) return why ?? 'no answer';
  return `M${diameter} × ${value}`;
}

/** Through bolts by place, with the order of what each passes; gives back the y under it. */
export function boltList(
  sheet: Sheet,
  answer: (name: string) => Answer,
  units: Units,
  x: number,
  y: number,
  width: number,
): number {
  const ask: Ask = (name) => answer(name).value;
  const grip = (name: string): string => {
    const mm = numberOf(ask, name);
    return mm === undefined ? 'no answer' : short(mm, units);
  };
  const feet = feetInUse(ask);
  const count = numberOf(ask, 'foot_bolt_count');
  const rows: Row[] = [
    {
      cells: [
        'Lower bracket',
        '2',
        sizeWords(ask, answer('lower_bolt_length')),
        grip('lower_bolt_grip'),
        stackOf(ask, units, [
          ['wedge', 'wedge_middle'],
          ['shims', 'shim_stack'],
        ]),
      ],
    },
  ];
  if (feet.length > 0)
    rows.push({
      cells: [
        feet.length === 1 ? 'Foot' : 'Each foot',
        count === undefined ? '?' : String(count),
        sizeWords(ask, answer('foot_bolt_length')),
        grip('foot_bolt_grip'),
        stackOf(ask, units, [['pad', 'foot_pad']]),
      ],
    });
  return table(sheet, columnsIn(units), rows, x, y, width);
}
