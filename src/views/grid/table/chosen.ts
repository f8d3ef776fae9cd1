import type Handsontable from 'handsontable/base';
import type { Column } from '../columns.ts';
import type { GridRow } from '../rows.ts';
import type { Place, RowsState } from '../rows-state.ts';

export type Hot = InstanceType<typeof Handsontable>;

/** Which cell of the table is chosen. */
export interface Chosen {
  readonly row: GridRow;
  readonly column: Column;
}

/** Where the chosen cell is; undefined while none is. */
export function chosenAt(hot: Hot): { readonly at: number; readonly columnNumber: number } | undefined {
  const highlight = hot.getSelectedRangeLast()?.highlight;
  const { row, col } = highlight ?? {};
  if (typeof row !== 'number' || typeof col !== 'number' || row < 0 || col < 0) return undefined;
  return { at: row, columnNumber: col };
}

export function chosenPlace(hot: Hot, state: RowsState): Place | undefined {
  const where = chosenAt(hot);
  return where === undefined ? undefined : state.place(where.at, where.columnNumber);
}
