/** The columns of the table, in order. */
export const COLUMNS = ['label', 'value', 'unit', 'offBy', 'from'] as const;

export type Column = (typeof COLUMNS)[number];

export const columnAt = (at: number): Column | undefined => COLUMNS[at];

export const HEADINGS: Readonly<Record<Column, string>> = {
  label: 'Name',
  value: 'Value',
  unit: 'Unit',
  offBy: '±',
  from: 'Where from',
};

/** What a heading is called where the sign alone would not be understood. */
export const SPOKEN: Readonly<Record<Column, string>> = { ...HEADINGS, offBy: 'Off by' };

type Widths = Readonly<Record<Exclude<Column, 'label'>, number>>;

const BROAD: Widths = { value: 152, unit: 108, offBy: 52, from: 136 };
const CLOSE: Widths = { value: 152, unit: 100, offBy: 44, from: 88 };

/** Room in px from which the columns beside the names stand broad. */
const BROAD_FROM = 700;

const LEAST_LABEL = 168;

/** Width of a column in px, when the table has `room` px; the names take what the rest leaves. */
export function widthOf(column: Column, room: number): number {
  const widths = room >= BROAD_FROM ? BROAD : CLOSE;
  if (column !== 'label') return widths[column];
  const rest = Object.values(widths).reduce((sum, width) => sum + width, 0);
  return Math.max(LEAST_LABEL, room - rest);
}
