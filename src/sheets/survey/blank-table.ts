import type { Units } from '../../plan/plan.ts';
import { tableNamed } from '../../plan/tables.ts';
import { formatLength } from '../../units/format-length.ts';
import type { Flow } from '../page/flow.ts';
import type { Cell, Column, Row } from '../page/table.ts';
import { blankUnit } from './entry.ts';

/** A survey table to write in: its columns are those of the workbook, with ± and remarks for every row. */
export function blankTable(flow: Flow, name: string, count: number, units: Units): void {
  const table = tableNamed(name);
  if (table === undefined) throw new Error(`There is no survey table ${name}.`);
  const columns: Column[] = [
    { head: 'Row', width: 7 },
    ...table.columns.map(({ label, unit }) => ({ head: `${label}, ${blankUnit(unit, units)}` })),
    { head: '±', width: 12 },
    { head: 'What, with what, remarks', share: 1.7 },
  ];
  const rows = Array.from(
    { length: count },
    (_, i): Row => ({
      cells: [String(i + 1), ...columns.slice(1).map((): Cell => ({ blank: true }))],
    }),
  );
  flow.section(table.label, 40);
  const helps = table.columns.map(
    ({ label, help }) => `${label}: ${help.charAt(0).toLowerCase()}${help.slice(1)}`,
  );
  const off = formatLength(table.off_by, { unit: units === 'in' ? 'in' : 'mm' });
  flow.text(`${table.help} ${helps.join(' ')} Where ± stays empty, ${off} is taken.`, 'small');
  flow.table(columns, rows);
}
