import { catalogue, tableFunctions } from '../../calc/catalogue.ts';
import type { LibraryFunction, TableFunction } from '../../calc/record.ts';
import { cellNamed, limitCells, pages } from '../../plan/book.ts';
import type { OwnCell } from '../../plan/plan.ts';
import { tables } from '../../plan/tables.ts';
import type { InputCell, LimitCell, ResultCell, TableTemplate } from '../../plan/template.ts';
import { callOf } from './call-of.ts';
import { STANDARD_FUNCTIONS, type StandardFunction } from './standard-functions.ts';

/** Something a formula may name. `insert` is what goes into the formula; functions leave their bracket open. */
export type Entry = {
  readonly id: string;
  readonly title: string;
  readonly unit: string;
  readonly insert: string;
} & (
  | { readonly kind: 'function'; readonly record: LibraryFunction | TableFunction }
  | { readonly kind: 'table'; readonly table: TableTemplate }
  | { readonly kind: 'standard'; readonly standard: StandardFunction }
  | { readonly kind: 'cell'; readonly cell: InputCell | ResultCell; readonly page: string }
  | { readonly kind: 'room'; readonly limit: LimitCell }
  | { readonly kind: 'own'; readonly own: OwnCell }
);

const functions = [...catalogue, ...tableFunctions].map(
  (record): Entry => ({
    kind: 'function',
    id: record.id,
    title: record.title,
    unit: 'unit' in record ? record.unit : '–',
    insert: `${record.id}(`,
    record,
  }),
);

const standard = STANDARD_FUNCTIONS.map(
  (it): Entry => ({
    kind: 'standard',
    id: it.id,
    title: it.gives,
    unit: '–',
    insert: `${it.id}(`,
    standard: it,
  }),
);

const cells = pages.flatMap(({ page, sections }) =>
  sections.flatMap((section) =>
    section.cells.map(
      (cell): Entry => ({
        kind: 'cell',
        id: cell.name,
        title: cell.label,
        unit: cell.unit,
        insert: cell.name,
        cell,
        page,
      }),
    ),
  ),
);

const surveyTables = tables.map(
  (table): Entry => ({
    kind: 'table',
    id: table.name,
    title: table.label,
    unit: 'mm',
    insert: table.name,
    table,
  }),
);

const rooms = limitCells
  .filter((limit) => limit.graded !== false)
  .map((limit): Entry => {
    const result = cellNamed(limit.result);
    const name = `${limit.name}_room`;
    return {
      kind: 'room',
      id: name,
      title: `Room of the limit on: ${result?.label ?? limit.result}`,
      unit: result?.unit ?? '–',
      insert: name,
      limit,
    };
  });

/** All that formulas may name, apart from a plan's own cells. */
export const bookEntries: readonly Entry[] = [...cells, ...rooms, ...surveyTables, ...functions, ...standard];

const ownEntry = (own: OwnCell): Entry => ({
  kind: 'own',
  id: own.name,
  title: own.label,
  unit: own.unit,
  insert: own.name,
  own,
});

/** The same with a plan's own cells first. */
export const entriesWith = (own: readonly OwnCell[]): readonly Entry[] => [
  ...own.map(ownEntry),
  ...bookEntries,
];

const wordsOf = (entry: Entry): string =>
  [
    entry.id,
    entry.title,
    entry.kind === 'function' ? `${callOf(entry.record)} ${entry.record.formula}` : '',
    entry.kind === 'cell' ? `${entry.cell.short} ${entry.page}` : '',
  ]
    .join(' ')
    .toLowerCase();

/** Entries in which every word of a search stands, as part of a name, label or formula; names that begin so first. */
export function found(entries: readonly Entry[], search: string): readonly Entry[] {
  const words = search.toLowerCase().split(/\s+/).filter(Boolean);
  if (words.length === 0) return entries;
  const hits = entries.filter((entry) => {
    const text = wordsOf(entry);
    return words.every((word) => text.includes(word));
  });
  const first = words[0] ?? '';
  const begins = (entry: Entry): boolean => entry.id.toLowerCase().startsWith(first);
  return [...hits.filter(begins), ...hits.filter((entry) => !begins(entry))];
}
