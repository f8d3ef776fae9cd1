import { pages } from '../../plan/book.ts';

const pageOf = new Map(
  pages.flatMap(({ page, sections }) =>
    sections.flatMap(({ cells }) => cells.map(({ name }) => [name, page.toLowerCase()] as const)),
  ),
);

/** The address of a cell on its page; the owner's own cells have a page of theirs. */
export const cellHref = (name: string): string => `#/${pageOf.get(name) ?? 'own-cells'}/${name}`;
