import { describe, expect, it } from 'vitest';
import { holesOf } from '../../../src/order/holes.ts';
import type { Plan } from '../../../src/plan/plan.ts';
import { jobSheet } from '../../../src/sheets/job/job-sheet.ts';
import { keyLetter } from '../../../src/sheets/job/keep-out-key.ts';
import { together } from '../../../src/sheets/job/ordinates.ts';
import { sideMarking } from '../../../src/sheets/job/side-marking.ts';
import { across } from '../../../src/sheets/job/stern-marking.ts';
import { PAPERS } from '../../../src/sheets/page/paper.ts';
import { type SheetInput, valuesOf } from '../../../src/sheets/sheet-input.ts';
import { pdfOfPrintout } from '../../../src/sheets/write/pdf-of-printout.ts';
import { caseAsk } from '../../order/case-ask.ts';
import { readPdf, textOf } from '../../support/read-pdf.ts';
import { demoPlan, inputFor, lettering } from '../../support/sheets.ts';

async function pagesOf(
  plan: Plan,
  scenario: string | null,
  more: Partial<SheetInput> = {},
): Promise<string[]> {
  const printout = jobSheet(await inputFor(plan, scenario, more));
  return (await readPdf(await pdfOfPrintout(printout, await lettering()))).map(textOf);
}

describe('the job sheet', () => {
  it('has two pages, whichever boat and paper', async () => {
    for (const name of ['start', 'beside-the-ladder', 'raked-aft', 'stern-hung-rudder', 'measured-afloat']) {
      const plan = demoPlan(name);
      for (const scenario of [null, ...plan.scenarios.map((it) => it.name)])
        for (const paper of PAPERS) {
          const { sheets, facts } = jobSheet(await inputFor(plan, scenario, { paper }));
          // What stops the work stands over every sheet, and may push the limits or the holes on to one more.
          const most = facts.stop === undefined ? 2 : 4;
          expect(sheets.length, `${name}, ${scenario}, ${paper}`).toBeGreaterThanOrEqual(2);
          expect(sheets.length, `${name}, ${scenario}, ${paper}`).toBeLessThanOrEqual(most);
        }
    }
  });

  it('says across its head and on the hole table why nobody drills by a plan that cannot be built', async () => {
    const plan = demoPlan('start');
    const put = (changes: Readonly<Record<string, number>>): Plan => ({
      ...plan,
      inputs: new Map(
        [...plan.inputs].map(([name, it]) => [name, { ...it, value: changes[name] ?? it.value }]),
      ),
    });
    // The drive unit begins at 1100 − 180 = 920 at the least, the clamp ends at 960 + 40; the foot's head is over the edge.
    const pages = await pagesOf(put({ upper_bracket_height: 960, port_foot_height: 880 }), null, {
      units: 'mm',
    });
    const said =
      /Do not drill from this sheet: the drive unit overlaps the upper clamp by \d+ mm; the port foot hangs \d+ mm over/;
    for (const page of pages) expect(page).toMatch(said);
    expect(pages.join(' ').split('Do not drill from this sheet')).toHaveLength(pages.length + 2);
    for (const page of await pagesOf(plan, null)) expect(page).not.toContain('Do not drill');
    // Outside, and to be built all the same: listed with the holes alone.
    const [first = ''] = await pagesOf(plan, 'Three shims', { units: 'mm' });
    expect(first).toContain('Outside their limits: rudder gap, 5.3 mm short');
  });

  it('lists the stand-ins under a hole with the holes', async () => {
    const plan = demoPlan('start');
    const inputs = new Map(
      [...plan.inputs].map(([name, it]) => [
        name,
        {
          ...it,
          origin: ['bolt_diameter', 'foot_bolt_spacing', 'gear_mass'].includes(name) ? 'stand-in' : 'reading',
        } as const,
      ]),
    );
    const [first = ''] = await pagesOf({ ...plan, inputs }, null);
    const said = /Stand-ins under these holes: (.*?) before you drill/.exec(first)?.[1] ?? '';
    expect(said).toMatch(/^bolt diameter; foot bolt[^;]*\. Measure them$/);
  });

  it('says where every hole is, in mm and 1/32 in, with what the rounding adds', async () => {
    const [first = ''] = await pagesOf(demoPlan('start'), 'Three shims');
    // By hand: the feet's middles stand 170 mm off the centreline, their bolts 80 mm apart, so at 130 and 210 mm.
    // 210 mm = 8.268 in; 8 9/32 in = 210.34 mm.
    expect(first).toContain('Port foot, port to port 210 8 9⁄32 0.0, +0.3');
    expect(first).toContain('Port foot, starboard to port 130 5 1⁄8 0.0, +0.2');
    // Up a face 10° off plumb from 790 mm: 790/cos 10° = 802.19 mm; 31 19/32 in = 802.48 mm.
    expect(first).toMatch(/802 31 19⁄32 −0\.2, \+0\.3/);
  });

  it('letters and names what holes keep clear of, from port to starboard, whichever paper', async () => {
    for (const paper of PAPERS)
      for (const units of ['mm', 'both'] as const) {
        const plan = demoPlan('measured-afloat');
        const [first = ''] = await pagesOf(plan, 'Clear of the ladder', { paper, units });
        expect(first.replace(/\s+/g, ' ')).toContain(
          'Keep clear of a: exhaust · b: stringer to port, inside · c: drain hose, inside · d: ladder.',
        );
      }
    expect((await pagesOf(demoPlan('start'), null))[0]).not.toContain('Keep clear of');
  });

  it('letters every hole on the drawing, those too that drift apart a little at a time', () => {
    const { holes } = holesOf(caseAsk(), 'mm');
    const [first] = holes;
    if (first === undefined) throw new Error('The case has holes.');
    const drifting = [0, 0.04, 0.08, 0.12].map((off, i) => ({
      ...first,
      number: i + 1,
      across: { ...first.across, exact: first.across.exact + off },
    }));
    const numbers = together(drifting, across).flatMap((it) => it.numbers.split(', '));
    expect(numbers).toEqual(['1', '2', '3', '4']);
  });

  it('gives each letter paper of its own', async () => {
    const { sheets } = jobSheet(await inputFor(demoPlan('measured-afloat'), null, { paper: 'letter' }));
    const marks = sheets[0]?.marks ?? [];
    const letters = marks.flatMap((it) => (it.kind === 'text' && /^[a-z]$/.test(it.text) ? [it] : []));
    expect(letters.map((it) => it.text).sort()).toEqual(['a', 'b', 'c', 'd']);
    const lefts = letters.map((it) => it.x).sort((a, b) => a - b);
    for (const [i, it] of lefts.entries()) if (i > 0) expect(it - (lefts[i - 1] ?? 0)).toBeGreaterThan(4);
    expect(Array.from({ length: 28 }, (_, i) => keyLetter(i)).slice(24)).toEqual(['y', 'z', 'aa', 'ab']);
  });

  it('draws the face as measured where it is followed', async () => {
    const input = await inputFor(demoPlan('measured-afloat'), null);
    const corners = (profile: readonly (readonly [number, number])[]): number =>
      sideMarking(valuesOf(input), 'mm', profile).shapes.flatMap((it) =>
        it.kind === 'polygon' && it.role === 'cut' && it.part === 'transom_rake' ? it.points : [],
      ).length;
    expect(corners([])).toBe(4);
    // Two knots within the face's height: two corners more on either side of the skin.
    expect(
      corners([
        [100, 0],
        [300, -20],
        [600, -75],
        [900, -110],
      ]),
    ).toBeGreaterThan(7);
  });

  it('shows lengths in one unit when one is wanted', async () => {
    const [mm = '', ...restMm] = await pagesOf(demoPlan('start'), 'Three shims', { units: 'mm' });
    // Bolts and drills are hardware, told as they are sold.
    const lengths = [mm, ...restMm]
      .join(' ')
      .replace(/or \d+⁄\d+-\d+ × [\d⁄ ]+ in/g, '')
      .replace(/Drills: .*? from memory/, '');
    expect(lengths).not.toContain('⁄');
    const [inch = ''] = await pagesOf(demoPlan('start'), 'Three shims', { units: 'in' });
    expect(inch).toContain('8 9⁄32');
    expect(inch).not.toContain('210 mm');
  });

  it('lists what to cut, 20 mm long first, and the bolts with their stacks', async () => {
    const input = await inputFor(demoPlan('start'), 'Three shims');
    const cut = Number(input.answer('port_strut_cut').value);
    const second = (await pagesOf(demoPlan('start'), 'Three shims', { units: 'mm' }))[1] ?? '';
    expect(second).toContain(`${(cut + 20).toFixed(1)} mm ${cut.toFixed(1)} mm`);
    const length = input.answer('lower_bolt_length').value;
    expect(second).toContain(`M${input.answer('bolt_diameter').value} × ${length}`);
    // The layers in their order, from outside to inside.
    expect(second).toMatch(
      /Bolt head · plain washer · flange 10 · .*shims? 36.* · transom 18 · epoxy bed 3 · backing plate 8 · plain washer · .*nut/,
    );
    expect(second).toMatch(/1 Hull bolts of the lower bracket.*5 Shaft clamps/);
  });

  it('cuts first by the trial tubes’ extra, and says when that takes a tube more or no tube is long enough', async () => {
    const second = async (changes: Readonly<Record<string, number>>): Promise<string> => {
      const plan = demoPlan('start');
      const inputs = new Map(
        [...plan.inputs].map(([name, it]) => [name, { ...it, value: changes[name] ?? it.value }]),
      );
      return (await pagesOf({ ...plan, inputs }, null, { units: 'mm' })).join(' ');
    };
    // Struts of 205.2 mm; two of them and one cut fill 412.4 mm.
    const long = await second({ strut_trial_extra: 30, strut_supply_length: 412.4 });
    expect(long).toMatch(/Cut first, 30 mm long/);
    expect(long).toContain('235.2 mm 205.2 mm');
    expect(long).toContain('take 1 tube of 412.4 mm. Cut that long, they take 2.');
    expect(await second({ strut_supply_length: 150 })).toContain('No tube gives the port strut, 205.2 mm');
  });

  it('names every limit that is outside, with how far', async () => {
    const second = (await pagesOf(demoPlan('start'), 'Three shims', { units: 'mm' }))[1] ?? '';
    expect(second).toContain('outside Rudder gap 5.3 mm short, at least 50 mm');
    expect(second).toContain('As fitted');
    expect(second).toContain('Signature');
    const held = (await pagesOf(demoPlan('start'), 'Four shims', { units: 'mm' }))[1] ?? '';
    expect(held).not.toContain('outside Rudder gap');
  });

  it('leaves a ruled blank for what is still a stand-in, and says when there are more', async () => {
    const plan = demoPlan('start');
    const [first = ''] = await pagesOf(plan, null);
    expect(first).toMatch(/invented round figures/);
    const read = new Map([...plan.inputs].map(([name, it]) => [name, { ...it, origin: 'reading' as const }]));
    const [none = ''] = await pagesOf({ ...plan, inputs: read }, null);
    expect(none).toContain('No value here is a stand-in.');
    expect(none).toContain('Rests on no stand-ins');
  });

  it('still prints a plan that lacks values, and says what is missing', async () => {
    const plan = demoPlan('start');
    const gone = ['transom_rake', 'lower_bracket_height', 'strut_count', 'bolt_diameter'];
    const inputs = new Map(
      [...plan.inputs].map(([name, it]) => [name, gone.includes(name) ? { ...it, value: null } : it]),
    );
    const pages = await pagesOf({ ...plan, inputs }, null);
    expect(pages.join(' ')).toMatch(/no answer/i);
  });
});
