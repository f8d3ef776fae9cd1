import { stopWords } from '../../order/cautions.ts';
import { orderList } from '../../order/list/order-list.ts';
import { profileOf } from '../../order/profile-of.ts';
import type { OrderTable } from '../../order/section.ts';
import type { CellName } from '../../plan/names.ts';
import { standIns } from '../../plan/stand-ins.ts';
import { Flow } from '../page/flow.ts';
import type { Printout } from '../page/printout.ts';
import { stopPlate, stopPlateHeight } from '../page/stop-plate.ts';
import { type Column, headHeight, type Row, rowHeight, table } from '../page/table.ts';
import { cautionsOf, printoutFor, type SheetInput } from '../sheet-input.ts';

/** Tables of no more columns than this stand side by side, to fill the width. */
const SLIM = 2;
const BETWEEN = 8;

interface Printed {
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
}

const printedOf = ({ heads, rows }: OrderTable): Printed => ({
  columns: heads.map(({ text, figure, share }) => ({
    head: text,
    share: share ?? 1,
    ...(figure ? { align: 'right' as const } : {}),
  })),
  rows: rows.map((cells) => ({ cells })),
});

/** Short tables side by side, kept together on one sheet. */
function beside(flow: Flow, tables: readonly Printed[]): void {
  const width = (flow.sheet.area.width - BETWEEN * (tables.length - 1)) / tables.length;
  const heights = tables.map(({ columns, rows }) =>
    rows.reduce(
      (sum, row) => sum + rowHeight(flow.sheet, row, columns, width),
      headHeight(flow.sheet, columns, width),
    ),
  );
  flow.place(Math.max(...heights) + 2, (sheet, x, y) => {
    for (const [i, { columns, rows }] of tables.entries())
      table(sheet, columns, rows, x + i * (width + BETWEEN), y, width);
  });
}

function plate(flow: Flow, words: string): void {
  const height = stopPlateHeight(flow.sheet, words, flow.sheet.area.width);
  flow.place(height, (sheet, x, y, width) => stopPlate(sheet, words, x, y, width));
}

/** The order list, to take to a chandler. */
export function orderSheet(input: SheetInput): Printout {
  const cautions = cautionsOf(input);
  const printout = printoutFor(input, 'order list', stopWords(cautions, 'list'));
  const flow = new Flow(printout);
  const ask = (name: CellName) => input.answer(name).value;
  const sections = orderList(
    { ask, units: input.units, profile: profileOf(ask, input.plan) },
    standIns(input.plan, input.scenario),
    cautions,
  );
  flow.title('Order list');
  for (const { title, lead, stop, tables, notes, unanswered, standsOn } of sections) {
    flow.section(title, 34);
    flow.text(lead, 'small');
    if (stop !== undefined) plate(flow, stop);
    for (const why of unanswered) flow.text(why, 'strong');
    const printed = tables.filter((it) => it.rows.length > 0).map(printedOf);
    if (printed.length > 1 && printed.every((it) => it.columns.length <= SLIM)) beside(flow, printed);
    else for (const it of printed) flow.table(it.columns, it.rows);
    for (const note of notes) flow.text(note);
    if (standsOn !== undefined) flow.text(standsOn, 'small');
  }
  return printout.finish();
}
