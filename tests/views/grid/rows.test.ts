import { describe, expect, it } from 'vitest';
import { inputs, pages, results } from '../../../src/plan/book.ts';
import { heightOf, isCellRow, isFifth, isHead, rowsOf } from '../../../src/views/grid/rows.ts';

describe('rows of the grid', () => {
  const rows = rowsOf(undefined, ['spare']);

  it('hold every cell of the workbook once, in its order, the survey’s after the rest, then the own cells', () => {
    const names = rows.filter(isCellRow).map((row) => row.name);
    const namesOf = (some: typeof pages): string[] =>
      some.flatMap((page) => page.sections.flatMap((section) => section.cells.map((cell) => cell.name)));
    const [survey, ...others] = pages;
    expect(survey?.page).toBe('Survey');
    expect(names).toEqual([...namesOf(others), ...namesOf(pages.slice(0, 1)), 'spare']);
    expect(names).toHaveLength(inputs.length + results.length + 1);
  });

  it('put the heading of each page and section above its cells', () => {
    const mount = rows.findIndex((row) => row.kind === 'page' && row.title === 'Mount');
    expect(rows[mount + 1]).toMatchObject({ kind: 'section', title: 'The upper bracket', first: true });
    expect(rows[mount + 2]).toMatchObject({ kind: 'book', name: 'upper_bracket_height' });
  });

  it('end with the place for a new cell', () => {
    expect(rows.at(-1)).toEqual({ kind: 'new' });
  });

  it('of one page are that page alone, without its name', () => {
    const mount = rowsOf('Mount', ['spare']);
    expect(mount.some((row) => row.kind === 'page' || row.kind === 'own')).toBe(false);
    expect(mount.filter(isCellRow)).toHaveLength(
      pages.find((page) => page.page === 'Mount')?.sections.flatMap((it) => it.cells).length ?? -1,
    );
    expect(
      rowsOf('Own cells', ['spare'])
        .filter(isCellRow)
        .map((row) => row.name),
    ).toEqual(['spare']);
  });

  it('are 32 px high, and give headings the free space above them', () => {
    const heights = new Set(rows.filter((row) => !isHead(row)).map((row) => heightOf(row, 5)));
    expect([...heights]).toEqual([32]);
    expect(heightOf({ kind: 'section', title: 'x', first: false }, 5)).toBe(64);
    expect(heightOf({ kind: 'section', title: 'x', first: true }, 5)).toBeLessThan(64);
  });

  it('carry a heavier rule under every fifth of a section', () => {
    const cells = rows.filter((row) => row.kind === 'book' && row.section === 'Where the shaft stands');
    expect(cells.length).toBeGreaterThan(10);
    expect(cells.map(isFifth)).toEqual(cells.map((_, i) => i % 5 === 4));
  });
});
