import { beforeAll, describe, expect, it } from 'vitest';
import { BINDING, MARGIN, PAPERS, type PaperName } from '../../src/sheets/page/paper.ts';
import type { Printout } from '../../src/sheets/page/printout.ts';
import { SHEET_NAMES, type SheetName, sheetKinds } from '../../src/sheets/registry.ts';
import { pdfOfPrintout } from '../../src/sheets/write/pdf-of-printout.ts';
import { type ReadPage, type ReadText, readPdf, textOf } from '../support/read-pdf.ts';
import { demoPlan, inputFor, lettering } from '../support/sheets.ts';

const CASES: readonly (readonly [plan: string, paper: PaperName])[] = [
  ['start', 'a4'],
  ['start', 'letter'],
  ['beside-the-ladder', 'a4'],
  ['raked-aft', 'letter'],
  ['stern-hung-rudder', 'a4'],
];

const printed = SHEET_NAMES.filter((name) => sheetKinds[name].make !== undefined);

/** The survey form is the same blank for every boat. */
const all = printed.flatMap((name) =>
  CASES.filter(([plan]) => name !== 'survey' || plan === 'start').map(
    ([plan, paper]) => [name, plan, paper] as const,
  ),
);

async function made(name: SheetName, plan: string, paper: PaperName): Promise<Printout> {
  const loaded = demoPlan(plan);
  const make = sheetKinds[name].make;
  if (make === undefined) throw new Error(`${name} cannot be printed.`);
  return make(await inputFor(loaded, loaded.scenarios[0]?.name ?? null, { paper }));
}

/** What of a line's height its letters fill, above and below the baseline, in sizes. */
const [ABOVE, BELOW] = [0.7, 0.1];
const MM = 25.4 / 72;

const overlap = (a: ReadText, b: ReadText): boolean =>
  a.x + 0.1 < b.x + b.width &&
  b.x + 0.1 < a.x + a.width &&
  a.y - a.size * ABOVE * MM < b.y + b.size * BELOW * MM &&
  b.y - b.size * ABOVE * MM < a.y + a.size * BELOW * MM;

describe.each(all)('the %s sheet of %s on %s', (name, plan, paper) => {
  let printout: Printout;
  let pages: ReadPage[];

  beforeAll(async () => {
    printout = await made(name, plan, paper);
    pages = await readPdf(await pdfOfPrintout(printout, await lettering()));
  }, 60_000);

  it('keeps its lines inside the margins', () => {
    for (const { marks, paper: its } of printout.sheets) {
      for (const mark of marks) {
        if (mark.kind !== 'outline') continue;
        // What is clipped reaches as far as its clip.
        for (const segment of mark.clip ?? mark.outline) {
          const [x, y] = segment.slice(-2) as [number, number];
          if (segment[0] === 'Z') continue;
          expect(x).toBeGreaterThanOrEqual(BINDING - 0.01);
          expect(x).toBeLessThanOrEqual(its.width - MARGIN + 0.01);
          expect(y).toBeGreaterThanOrEqual(MARGIN - 0.01);
          expect(y).toBeLessThanOrEqual(its.height - MARGIN + 0.01);
        }
      }
    }
  });

  it('keeps its text inside the margins, at 8 points or more', () => {
    for (const { texts, width, height } of pages) {
      for (const it of texts) {
        expect(it.size, it.text).toBeGreaterThanOrEqual(7.99);
        expect(it.x, it.text).toBeGreaterThanOrEqual(BINDING - 0.1);
        expect(it.x + it.width, it.text).toBeLessThanOrEqual(width - MARGIN + 0.2);
        expect(it.y, it.text).toBeGreaterThanOrEqual(MARGIN);
        expect(it.y, it.text).toBeLessThanOrEqual(height - MARGIN);
      }
    }
  });

  it('sets no text over another', () => {
    for (const { texts } of pages) {
      for (const [i, a] of texts.entries()) {
        const over = texts.slice(i + 1).find((b) => overlap(a, b));
        expect(over === undefined ? null : `${a.text} / ${over.text}`).toBeNull();
      }
    }
  });

  it('carries its title block on every page, the cautions included', () => {
    for (const [i, page] of pages.entries()) {
      const text = textOf(page);
      expect(text).toContain(`${i + 1} of ${pages.length}`);
      expect(text).toMatch(/Rests on (no|\d+) stand-ins?/);
      expect(text).toContain('The gear maker’s manual comes first');
      expect(text).toContain('let a rigger, yard or surveyor look before you drill');
    }
  });

  it('is black and white, and says nothing is safe', () => {
    for (const page of pages) {
      for (const colour of page.colours) expect(['#000000', '#ffffff']).toContain(colour);
      expect(textOf(page)).not.toMatch(/\bsafe(ly)?\b/i);
    }
  });
});

describe('every sheet', () => {
  it('is the same to the last byte when it is made again', async () => {
    const letters = await lettering();
    for (const name of printed) {
      for (const paper of PAPERS) {
        const one = await pdfOfPrintout(await made(name, 'start', paper), letters);
        const two = await pdfOfPrintout(await made(name, 'start', paper), letters);
        expect(Buffer.compare(one, two)).toBe(0);
      }
    }
  });
});
