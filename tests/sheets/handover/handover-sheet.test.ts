import { describe, expect, it } from 'vitest';
import { setFitted, setHandover, setStep } from '../../../src/plan/edit.ts';
import { handoverSheet } from '../../../src/sheets/handover/handover-sheet.ts';
import { pdfOfPrintout } from '../../../src/sheets/write/pdf-of-printout.ts';
import { planFrom } from '../../plan/edit/edits.ts';
import { readPdf, textOf } from '../../support/read-pdf.ts';
import { demoPlan, inputFor, lettering } from '../../support/sheets.ts';

describe('the handover sheet', () => {
  it('says what was read, by whom, what is not ticked and what is still due', async () => {
    let plan = planFrom(
      setFitted(demoPlan('start'), 'upper_bracket_height', { value: 806, origin: 'reading', who: 'R.' }),
    );
    plan = planFrom(setStep(plan, { step: 'pilot', done: true, value: 18.5, when: '2031-04-09' }));
    plan = planFrom(setHandover(plan, 'handed_to', 'M.'));
    const input = await inputFor(plan, null, { units: 'mm' });
    const pages = await readPdf(await pdfOfPrintout(handoverSheet(input), await lettering()));
    const text = pages.map(textOf).join(' ').replace(/\s+/g, ' ');
    for (const words of [
      'Height of the upper bracket: 806 mm, planned 800 mm (R.)',
      'Pilot the first hole; thickness of the transom 18.5 mm (2031-04-09)',
      'Handed over to: M.',
      'Not ticked: Look inside',
      'After the first sail',
      'Done: not yet',
    ]) {
      expect(text).toContain(words);
    }
  });
});
