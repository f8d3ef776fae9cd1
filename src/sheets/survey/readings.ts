import { pages } from '../../plan/book.ts';
import type { InputCell, Page } from '../../plan/template.ts';

export interface ReadingGroup {
  readonly title: string;
  readonly lead: string;
  readonly cells: readonly InputCell[];
}

/**
 * What is not read on the boat or the gear is no line on the form; but Boat is asked for whole, with what is taken where a
 * line stays empty.
 */
const isAsked =
  (page: Page) =>
  (cell: { readonly kind: string }): cell is InputCell =>
    cell.kind === 'input' && (['reading', 'manual'].includes((cell as InputCell).where) || page === 'Boat');

/** The readings of a page of the workbook, group by group. */
export const readingsOf = (page: Page): readonly ReadingGroup[] =>
  pages
    .filter((it) => it.page === page)
    .flatMap(({ sections }) =>
      sections
        .map(({ title, lead, cells }) => ({ title, lead, cells: cells.filter(isAsked(page)) }))
        .filter(({ cells }) => cells.length > 0),
    );

/** Numbers of the readings, as they stand on the form. */
export const numbersOf = (groups: readonly ReadingGroup[]): ReadonlyMap<string, number> =>
  new Map(groups.flatMap(({ cells }) => cells).map(({ name }, i) => [name, i + 1]));
