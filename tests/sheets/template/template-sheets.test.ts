import { describe, expect, it } from 'vitest';
import { PAPERS, type PaperName } from '../../../src/sheets/page/paper.ts';
import { templateSheets } from '../../../src/sheets/template/template-sheets.ts';
import { pdfOfPrintout } from '../../../src/sheets/write/pdf-of-printout.ts';
import { type ReadPage, readPdf, textOf } from '../../support/read-pdf.ts';
import { demoPlan, inputFor } from '../../support/sheets.ts';

/** Read back by pdfjs-dist, which shares nothing with what writes it. */
async function pagesOf(paper: PaperName, demo = 'start', scenario: string | null = 'Four shims') {
  const input = await inputFor(demoPlan(demo), scenario, { paper });
  return readPdf(await pdfOfPrintout(templateSheets(input), input.lettering));
}

interface Box {
  readonly width: number;
  readonly height: number;
  readonly x: number;
  readonly y: number;
}

const boxes = (page: ReadPage): Box[] =>
  page.paths.map(({ points }) => {
    const [xs, ys] = [points.map((it) => it[0]), points.map((it) => it[1])];
    const [x0, x1, y0, y1] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
    return { width: x1 - x0, height: y1 - y0, x: (x0 + x1) / 2, y: (y0 + y1) / 2 };
  });

const near = (a: number, b: number): boolean => Math.abs(a - b) < 0.01;

const sized = (page: ReadPage, width: number, height: number): Box[] =>
  boxes(page).filter((it) => near(it.width, width) && near(it.height, height));

const titled = (pages: readonly ReadPage[], title: string): ReadPage[] =>
  pages.filter((it) => textOf(it).startsWith(`${title} `));

describe.each(PAPERS)('templates on %s', (paper) => {
  it('have a bar of 100 mm and one of 4 in on every page, and say 1:1', async () => {
    for (const page of await pagesOf(paper)) {
      expect(sized(page, 100, 0)).toHaveLength(1);
      expect(sized(page, 101.6, 0)).toHaveLength(1);
      expect(textOf(page)).toContain('1:1');
      expect(textOf(page)).toContain('gear maker’s manual comes first');
    }
  });

  it('show the foot and the plate at their size, holes of 13 mm', async () => {
    const pages = await pagesOf(paper);
    const [foot] = titled(pages, 'Foot');
    if (foot === undefined) throw new Error('There is no page for the foot.');
    expect(sized(foot, 120, 60)).toHaveLength(1);
    const holes = sized(foot, 13, 13).sort((a, b) => a.x - b.x);
    expect(holes).toHaveLength(2);
    expect((holes[1]?.x ?? 0) - (holes[0]?.x ?? 0)).toBeCloseTo(80, 2);
    expect(textOf(foot)).not.toContain('Its bolts would miss it');
    expect(titled(pages, 'Backing plate, lower bracket').map((it) => sized(it, 123, 123).length)).toEqual([
      1,
    ]);
  });
});

describe('a template larger than the page', () => {
  it('is turned when it fits turned: the shim of 200 × 140 on A4', async () => {
    const [page, ...more] = titled(await pagesOf('a4'), 'Shim');
    if (page === undefined) throw new Error('There is no page for the shim.');
    expect(more).toEqual([]);
    expect(textOf(page)).toContain('Turned a quarter to the left');
    expect(sized(page, 140, 200)).toHaveLength(1);
    const holes = sized(page, 13, 13).sort((a, b) => a.y - b.y);
    expect((holes[1]?.y ?? 0) - (holes[0]?.y ?? 0)).toBeCloseTo(140, 2);
  });

  it('comes in pieces whose seams meet: the feet’s holes, 420 mm from first to last', async () => {
    const pages = titled(await pagesOf('a4'), 'Holes of the feet');
    expect(pages).toHaveLength(3);
    // The window is 175 wide from x 20; pages lie on one another at seams 5 mm from its edges, so each moves by 165.
    const holes = pages.flatMap((page, i) =>
      sized(page, 13, 13)
        .filter((it) => it.x > 20 && it.x < 195)
        .map((it) => it.x + 165 * i),
    );
    const found = [...new Set(holes.map((x) => Math.round(x * 100) / 100))].sort((a, b) => a - b);
    const [first = 0, ...others] = found;
    expect(others.map((x) => x - first).map((x) => Math.round(x * 10) / 10)).toEqual([80, 340, 420]);
    expect(textOf(pages[1] as ReadPage)).toContain('Piece 2 of 3 from the left');
  });
});
