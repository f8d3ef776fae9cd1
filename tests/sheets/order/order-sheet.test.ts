import { describe, expect, it } from 'vitest';
import { orderSheet } from '../../../src/sheets/order/order-sheet.ts';
import { PAPERS } from '../../../src/sheets/page/paper.ts';
import { pdfOfPrintout } from '../../../src/sheets/write/pdf-of-printout.ts';
import { readPdf, textOf } from '../../support/read-pdf.ts';
import { demoPlan, inputFor } from '../../support/sheets.ts';

describe.each(PAPERS)('the order list on %s', (paper) => {
  it('says what to buy, and on every sheet whose it is and what it rests on', async () => {
    const input = await inputFor(demoPlan('start'), 'Four shims', { paper });
    const pages = await readPdf(await pdfOfPrintout(orderSheet(input), input.lettering));
    const text = pages.map(textOf).join(' ').replaceAll('\u00a0', ' ');
    // ISO 888: a grip of 87 with washers, nut and two threads reaches 106.7.
    for (const said of [
      'M12 × 110',
      '2 locking',
      '1⁄2-13 × 4 1⁄2 in',
      'Epoxy bed',
      'One tube is enough',
      '802 mm (−0.2)',
    ])
      expect(text).toContain(said);
    for (const page of pages) {
      expect(textOf(page)).toContain('Four shims');
      expect(textOf(page)).toMatch(/Rests on \d+ stand-ins/);
      expect(textOf(page)).toContain('gear maker’s manual comes first');
    }
    expect(text).not.toMatch(/\bsafe/i);
  });

  it('keeps every text inside the margins', async () => {
    for (const demo of ['start', 'beside-the-ladder', 'stern-hung-rudder', 'raked-aft']) {
      const input = await inputFor(demoPlan(demo), null, { paper });
      for (const page of await readPdf(await pdfOfPrintout(orderSheet(input), input.lettering)))
        for (const it of page.texts) {
          expect([it.text, it.x >= 19.9]).toEqual([it.text, true]);
          expect([it.text, it.x + it.width <= page.width - 14.5]).toEqual([it.text, true]);
        }
    }
  });
});
