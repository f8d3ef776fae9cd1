import { describe, expect, it } from 'vitest';
import { HANDOVER_ENTRIES } from '../../../src/fitting/handover.ts';
import { goOn, lockAsDrilled, setFitted, setHandover, setStep, untick } from '../../../src/plan/edit.ts';
import { handoverSheet } from '../../../src/sheets/handover/handover-sheet.ts';
import { PAPERS } from '../../../src/sheets/page/paper.ts';
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
      'Handed over to M.',
      'Not ticked: Look inside',
      'After the first sail',
    ]) {
      expect(text).toContain(words);
    }
  });

  it('says what was gone on with and why, which ticks were taken off, and what was planned where it is locked', async () => {
    const name = 'lower_bracket_height';
    const by = { who: 'R.', when: '2031-04-09 10:12' };
    let plan = planFrom(setFitted(demoPlan('start'), name, { value: 253, origin: 'reading' }));
    plan = planFrom(lockAsDrilled(plan, [name], by));
    plan = planFrom(setStep(plan, { step: 'pilot', done: true, value: 24, ...by }));
    plan = planFrom(
      goOn(plan, {
        step: 'first_hole',
        because: 'the surveyor has seen it',
        despite: [{ stop: 'reading_pilot', by: 3, says: 'It read 24 mm.' }],
        ...by,
      }),
    );
    plan = planFrom(setStep(plan, { step: 'cloth', done: true, ...by }));
    plan = planFrom(untick(plan, 'cloth', { who: 'M.', when: '2031-04-09 11:00' }));
    const input = await inputFor(plan, null, { units: 'mm' });
    const pages = await readPdf(await pdfOfPrintout(handoverSheet(input), await lettering()));
    const text = pages.map(textOf).join(' ').replace(/\s+/g, ' ');
    for (const words of [
      'Height of the lower bracket: 253 mm, planned 250 mm; locked as drilled (R., 2031-04-09 10:12)',
      'thickness of the transom 24 mm. Not met: it must be between 15 mm and 21 mm (R.',
      'Drill it full size: because “the surveyor has seen it” (R., 2031-04-09 10:12). In spite of: It read 24 mm.',
      'Rig a drop cloth, mark the first hole: ticked (R., 2031-04-09 10:12), taken off (M., 2031-04-09 11:00)',
    ]) {
      expect(text).toContain(words);
    }
  });

  it('is one page while nothing is written down, whichever paper', async () => {
    for (const paper of PAPERS) {
      const input = await inputFor(demoPlan('measured-afloat'), null, { paper });
      expect(handoverSheet(input).sheets, paper).toHaveLength(1);
    }
  });

  it('has a ruled line to write on for each thing that is not written down, and none for what is', async () => {
    const rules = async (plan = demoPlan('start')) => {
      const input = await inputFor(plan, null, { units: 'mm' });
      const pages = await readPdf(await pdfOfPrintout(handoverSheet(input), await lettering()));
      expect(pages.map(textOf).join(' ')).not.toMatch(/not written down|not yet/);
      // Level lines that begin where the labels end: 20 mm of binding edge and 62 mm of label.
      return pages
        .flatMap((page) => page.paths)
        .filter(({ points: [from, to] }) => from !== undefined && to !== undefined && from[1] === to[1])
        .filter(({ points: [from] }) => Math.abs((from?.[0] ?? 0) - 82) < 0.01).length;
    };
    const lines = HANDOVER_ENTRIES.reduce((sum, it) => sum + (it.lines ?? 1), 0);
    expect(await rules()).toBe(lines);
    expect(await rules(planFrom(setHandover(demoPlan('start'), 'remarks', 'Two lines less.')))).toBe(
      lines - 2,
    );
  });
});
