import { describe, expect, it } from 'vitest';
import { inputs, pages } from '../../../src/plan/book.ts';
import { tables } from '../../../src/plan/tables.ts';
import { readingsOf } from '../../../src/sheets/survey/readings.ts';
import { surveyForm } from '../../../src/sheets/survey/survey-form.ts';
import { pdfOfPrintout } from '../../../src/sheets/write/pdf-of-printout.ts';
import { readPdf, textOf } from '../../support/read-pdf.ts';
import { demoPlan, inputFor, lettering } from '../../support/sheets.ts';

const pageOf = (name: string): string | undefined =>
  pages.find((it) => it.sections.some((section) => section.cells.some((cell) => cell.name === name)))?.page;

const flat = (text: string): string => text.replace(/\s+/g, ' ');

describe('the survey form', () => {
  it('asks for every reading of the boat and the gear, with how to take it', async () => {
    const form = surveyForm(await inputFor(demoPlan('start')));
    const pages = await readPdf(await pdfOfPrintout(form, await lettering()));
    const text = flat(pages.map(textOf).join(' '));
    const cells = [...readingsOf('Boat'), ...readingsOf('Gear')].flatMap((group) => group.cells);
    expect(cells.length).toBeGreaterThan(60);
    for (const { label, help, type } of cells) {
      expect(text).toContain(flat(label));
      if (type !== 'flag') expect(text).toContain(flat(help));
    }
    for (const { label, help, columns } of tables) {
      expect(text).toContain(flat(label));
      expect(text).toContain(flat(help));
      for (const column of columns) expect(text).toContain(`${column.label}, mm or in`);
    }
    for (const words of ['Plumb line hung aft of the stern', 'List while you measure', 'afloat'])
      expect(text).toContain(words);
  });

  it('leaves out no field of Boat, and says what is taken for one that is assumed', async () => {
    const form = surveyForm(await inputFor(demoPlan('start')));
    const text = flat((await readPdf(await pdfOfPrintout(form, await lettering()))).map(textOf).join(' '));
    const boat = inputs.filter((it) => pageOf(it.name) === 'Boat');
    expect(boat.length).toBeGreaterThan(15);
    for (const { label } of boat) expect(text).toContain(flat(label));
    expect(text).toContain('Left empty, 1025 kg/m³ is taken.');
    expect(text).toContain('Left empty, 20.0° is taken.');
  });

  it('letters each number on the overview once', async () => {
    const form = surveyForm(await inputFor(demoPlan('start')));
    const [first] = await readPdf(await pdfOfPrintout(form, await lettering()));
    const numbers = (first?.texts ?? []).filter((it) => /^\d{1,2}$/.test(it.text) && it.x < 110);
    expect(numbers.length).toBeGreaterThan(8);
    expect(new Set(numbers.map((it) => it.text)).size).toBe(numbers.length);
  });

  it('is blank: it shows none of the plan’s own values', async () => {
    const plan = demoPlan('start');
    const sheet = async (units: 'mm' | 'both'): Promise<string> => {
      const form = surveyForm(await inputFor(plan, 'Four shims', { units }));
      return (await readPdf(await pdfOfPrintout(form, await lettering()))).map(textOf).join(' ');
    };
    expect(await sheet('both')).not.toContain('56.9');
    expect(await sheet('mm')).not.toContain('mm or in');
  });

  it('asks in the unit that is wanted', async () => {
    const form = surveyForm(await inputFor(demoPlan('start'), null, { units: 'in' }));
    const text = (await readPdf(await pdfOfPrintout(form, await lettering()))).map(textOf).join(' ');
    expect(text).not.toContain('mm or in');
    expect(text).not.toMatch(/else ± [\d.]+ mm/);
  });
});
