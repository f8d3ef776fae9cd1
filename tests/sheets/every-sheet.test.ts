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

/** Every sheet as it was first written. */
const written = new Map<string, Uint8Array>();
const keyOf = (name: SheetName, plan: string, paper: PaperName): string => `${name} ${plan} ${paper}`;

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
    const bytes = await pdfOfPrintout(printout, await lettering());
    written.set(keyOf(name, plan, paper), bytes);
    pages = await readPdf(bytes.slice());
  }, 60_000);

  it('keeps its lines inside the margins', () => {
    for (const { marks, paper: its } of printout.sheets) {
      const isInside = (x: number, y: number): boolean =>
        x >= BINDING - 0.01 &&
        x <= its.width - MARGIN + 0.01 &&
        y >= MARGIN - 0.01 &&
        y <= its.height - MARGIN + 0.01;
      const outside = marks.flatMap((mark) =>
        mark.kind !== 'outline'
          ? []
          : // What is clipped reaches as far as its clip.
            (mark.clip ?? mark.outline).filter((segment) => {
              const [x, y] = segment.slice(-2) as [number, number];
              return segment[0] !== 'Z' && !isInside(x, y);
            }),
      );
      expect(outside).toEqual([]);
    }
  });

  it('keeps its text inside the margins, at 8 points or more', () => {
    for (const { texts, width, height } of pages) {
      const isFine = (it: ReadText): boolean =>
        it.size >= 7.99 &&
        it.x >= BINDING - 0.1 &&
        it.x + it.width <= width - MARGIN + 0.2 &&
        it.y >= MARGIN &&
        it.y <= height - MARGIN;
      expect(texts.filter((it) => !isFine(it))).toEqual([]);
    }
  });

  it('sets no text over another', () => {
    for (const { texts } of pages) {
      const over = texts.flatMap((a, i) =>
        texts.slice(i + 1).flatMap((b) => (overlap(a, b) ? [`${a.text} / ${b.text}`] : [])),
      );
      expect(over).toEqual([]);
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
      expect([...page.colours].filter((it) => it !== '#000000' && it !== '#ffffff')).toEqual([]);
      expect(textOf(page)).not.toMatch(/\bsafe(ly)?\b/i);
    }
  });
});

describe('every sheet', () => {
  it('is the same to the last byte when it is made again', async () => {
    const letters = await lettering();
    for (const name of printed) {
      for (const paper of PAPERS) {
        const one = written.get(keyOf(name, 'start', paper)) as Uint8Array;
        const two = await pdfOfPrintout(await made(name, 'start', paper), letters);
        expect(Buffer.compare(one, two)).toBe(0);
      }
    }
  });
});
