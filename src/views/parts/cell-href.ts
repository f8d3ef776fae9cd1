import { pages } from '../../plan/book.ts';
import { surveyWords } from '../../session/survey/survey-words.ts';

const pageOf = new Map(
  pages.flatMap(({ page, sections }) =>
    sections.flatMap(({ cells }) => cells.map(({ name }) => [name, page.toLowerCase()] as const)),
  ),
);

/** The address of a cell on its page; the owner's own cells have a page of theirs, the survey's tables stand on Survey. */
export const cellHref = (name: string): string =>
  surveyWords(name) === undefined ? `#/${pageOf.get(name) ?? 'own-cells'}/${name}` : '#/survey';
