import { beforeAll, describe, expect, it } from 'vitest';
import { PAPERS, type PaperName } from '../../../src/sheets/page/paper.ts';
import { Printout } from '../../../src/sheets/page/printout.ts';
import { scaleBars } from '../../../src/sheets/page/scale-bars.ts';
import { pdfOfPrintout } from '../../../src/sheets/write/pdf-of-printout.ts';
import { type ReadPage, readPdf, textOf } from '../../support/read-pdf.ts';
import { lettering } from '../../support/sheets.ts';

const facts = {
  name: 'trial',
  plan: 'Žluťásek, a trial',
  scenario: null,
  date: '2031-04-09',
  version: 'Sternmount',
  standIns: 1,
};

async function trial(paper: PaperName): Promise<Uint8Array> {
  const letters = await lettering();
  const printout = new Printout(facts, paper, letters);
  const sheet = printout.sheet();
  sheet.text('Twelve and nine sixteenths: 12 9⁄16 in, −3 × 4 ± 0.5°, Ø 10', 20, 20, { style: 'value' });
  scaleBars(sheet, 30, 40);
  sheet.rect(50, 100, 60, 30);
  sheet.circle(60, 200, 10);
  printout.sheet();
  return pdfOfPrintout(printout.finish(), letters);
}

/** Size of what a path covers, mm. */
const spans = (page: ReadPage): (readonly [number, number])[] =>
  page.paths.map(({ points }) => {
    const [xs, ys] = [points.map((it) => it[0]), points.map((it) => it[1])];
    return [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)] as const;
  });

const has = (page: ReadPage, width: number, height: number): boolean =>
  spans(page).some(([w, h]) => Math.abs(w - width) < 0.01 && Math.abs(h - height) < 0.01);

describe.each(PAPERS)('a PDF on %s', (paper) => {
  let bytes: Uint8Array;
  let pages: ReadPage[];

  beforeAll(async () => {
    bytes = await trial(paper);
    pages = await readPdf(bytes);
  }, 60_000);

  it('has pages of that paper', () => {
    // ISO 216 A4 is 210 × 297 mm; ANSI/ASME Y14.1 size A is 8.5 × 11 in.
    const [width, height] = paper === 'a4' ? [210, 297] : [8.5 * 25.4, 11 * 25.4];
    expect(pages).toHaveLength(2);
    for (const page of pages) {
      expect(page.width).toBeCloseTo(width, 3);
      expect(page.height).toBeCloseTo(height, 3);
    }
  });

  it('gives its text back, fractions and accents included', () => {
    const text = textOf(pages[0] as ReadPage);
    expect(text).toContain('12 9⁄16 in, −3 × 4 ± 0.5°, Ø 10');
    expect(text).toContain('Žluťásek, a trial');
    expect(text).toContain('Sheet 1 of 2, trial');
    expect(text).toContain('Rests on 1 stand-in');
    expect(text).toContain('gear maker’s manual comes first');
    expect(textOf(pages[1] as ReadPage)).toContain('2 of 2, trial');
  });

  it('has bars of 100 mm and 4 in, and shapes of the size they were given', () => {
    const page = pages[0] as ReadPage;
    expect(has(page, 100, 0)).toBe(true);
    expect(has(page, 101.6, 0)).toBe(true);
    expect(has(page, 60, 30)).toBe(true);
    expect(has(page, 20, 20)).toBe(true);
    expect(has(page, 99.9, 0)).toBe(false);
  });

  it('is the same to the last byte when it is made again', async () => {
    expect(Buffer.compare(await trial(paper), bytes)).toBe(0);
  });

  it('is black and white', () => {
    for (const page of pages)
      for (const colour of page.colours) expect(['#000000', '#ffffff']).toContain(colour);
  });
});
