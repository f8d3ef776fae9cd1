import { pages } from '../../plan/book.ts';
import type { InputCell, Page, ResultCell } from '../../plan/template.ts';

/** What the grid can be asked to show: one page of the workbook, or the owner's own cells. */
export type GridPage = Page | 'Own cells';

/** A heading: of a page, or of one of its sections. */
export interface HeadRow {
  readonly kind: 'page' | 'section';
  readonly title: string;
  /** The first section of a page stands close under the page's name. */
  readonly first: boolean;
}

/** One input or result of the workbook. */
export interface BookRow {
  readonly kind: 'book';
  readonly name: string;
  readonly cell: InputCell | ResultCell;
  readonly page: string;
  readonly section: string;
  /** Which of its section, from 0. */
  readonly nth: number;
}

/** A cell that the owner made. */
export interface OwnRow {
  readonly kind: 'own';
  readonly name: string;
  readonly nth: number;
}

/** The place where the owner names a new cell. */
export interface NewRow {
  readonly kind: 'new';
}

export type GridRow = HeadRow | BookRow | OwnRow | NewRow;

/** A row that stands for a cell. */
export type CellRow = BookRow | OwnRow;

export const isCellRow = (row: GridRow | undefined): row is CellRow =>
  row?.kind === 'book' || row?.kind === 'own';

/** A row with nothing in it to choose. */
export const isHead = (row: GridRow | undefined): boolean => row?.kind === 'page' || row?.kind === 'section';

// The survey's cells come after the rest: many plans leave them alone, and the table opens on the boat.
const inOrder = [
  ...pages.filter((it) => it.page !== 'Survey'),
  ...pages.filter((it) => it.page === 'Survey'),
];

const bookRows = inOrder.map(({ page, sections }) => ({
  page,
  rows: sections.flatMap(({ title, cells }, at): readonly GridRow[] => [
    { kind: 'section', title, first: at === 0 },
    ...cells.map(
      (cell, nth): BookRow => ({ kind: 'book', name: cell.name, cell, page, section: title, nth }),
    ),
  ]),
}));

const NEW_ROW: NewRow = { kind: 'new' };

const OWN_HEAD: HeadRow = { kind: 'section', title: 'Own cells', first: false };

/** The grid's rows in the order of the work, own cells last; with a page, that page's alone. */
export function rowsOf(page: GridPage | undefined, ownNames: readonly string[]): readonly GridRow[] {
  const own = (): readonly GridRow[] => [
    OWN_HEAD,
    ...ownNames.map((name, nth): OwnRow => ({ kind: 'own', name, nth })),
    NEW_ROW,
  ];
  if (page === 'Own cells') return own();
  if (page !== undefined) return bookRows.find((it) => it.page === page)?.rows ?? [];
  const book = bookRows.flatMap(({ page: title, rows }): readonly GridRow[] => [
    { kind: 'page', title, first: true },
    ...rows,
  ]);
  return [...book, ...own()];
}

const ROW = 32;
const GAP = 32;

/** Height of a row in px: every cell the same, a heading with the free space above it. */
export function heightOf(row: GridRow | undefined, at: number): number {
  if (row?.kind === 'page') return at === 0 ? 48 : 48 + GAP;
  if (row?.kind === 'section') return at === 0 || row.first ? ROW + 8 : ROW + GAP;
  return ROW;
}

/** Whether a heavier rule stands under a row: every fifth of its section. */
export const isFifth = (row: GridRow): boolean => isCellRow(row) && row.nth % 5 === 4;
