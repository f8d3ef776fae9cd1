import { readdirSync, readFileSync } from 'node:fs';
import { basename, join, resolve } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { orderOfWork } from '../../src/fitting/order-of-work.ts';
import { stopPoints } from '../../src/fitting/stop-points.ts';
import { inputNamed } from '../../src/plan/book.ts';
import { NOTES } from '../../src/session/not-judged/notes.ts';
import { jobSheet } from '../../src/sheets/job/job-sheet.ts';
import { orderSheet } from '../../src/sheets/order/order-sheet.ts';
import { surveyForm } from '../../src/sheets/survey/survey-form.ts';
import { templateSheets } from '../../src/sheets/template/template-sheets.ts';
import { caseAsk } from '../order/case-ask.ts';
import { demoPlan, inputFor } from '../support/sheets.ts';

/**
 * Figures of the trade: common practice, no source. They are check values of the tests; an owner is shown none of them,
 * since only the gear's own manual counts for the gear.
 */
const FIGURES: readonly (readonly [what: string, said: RegExp])[] = [
  ['bearing gap', /\b2 (in )?to 10 in\b/],
  ['drive overlap', /\b(about|usually) 6 in\b/],
  ['single strut', /\b(customary|at most|custom\w*) 18 in\b|\b18 in (long|at most)\b/],
  ['strut tubes', /\b(practice is|custom\w*|tubes? of|tubes?,) 31 in\b|\b31 in long\b/],
  ['arm spread', /\b40°? to 80°/],
  ['bolts', /\b(practice is|custom\w*|usual\w*) (M10|10 mm)\b|\b10 mm (through )?bolts\b/],
  ['edge distance', /\b(three|3) (bolt )?diameters\b/],
  ['sleeve', /\bsleeve gap\b|\bgap of a sleeve\b|\bsleeve whose gap\b/],
];

const ROOT = resolve(import.meta.dirname, '../..');

const filesIn = (folder: string, ending: RegExp): string[] =>
  readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => ending.test(name))
    .map((name) => join(folder, name));

const WRITTEN = [
  ...filesIn('templates', /\.json$/),
  ...filesIn('demo-data', /\.json$/),
  ...['order', 'fitting', 'sheets', 'session', 'views', 'drawings', 'cli', 'plan'].flatMap((layer) =>
    filesIn(`src/${layer}`, /\.tsx?$/),
  ),
  'README.md',
];

const PRINTED = { survey: surveyForm, job: jobSheet, order: orderSheet, template: templateSheets };

describe('figures of the trade, common practice without a source, are shown to nobody', () => {
  const texts: (readonly [where: string, text: string])[] = [];

  beforeAll(async () => {
    for (const file of WRITTEN) texts.push([file, readFileSync(join(ROOT, file), 'utf8')]);
    const input = await inputFor(demoPlan('start'), 'Three shims');
    for (const [name, make] of Object.entries(PRINTED))
      for (const { marks } of make(input).sheets)
        texts.push([name, marks.map((it) => (it.kind === 'text' ? it.text : '')).join(' ')]);
  }, 60_000);

  it.each(FIGURES)('%s', (_, said) => {
    for (const [where, text] of texts) expect(text, where).not.toMatch(said);
  });

  it('no stand-in, and no demo plan’s gear, has one of them rounded', () => {
    const figures = {
      bearing_gap_min: 2 * 25.4,
      bearing_gap_max: 10 * 25.4,
      drive_overlap: 6 * 25.4,
      single_strut_max: 18 * 25.4,
      strut_supply_length: 31 * 25.4,
      spread_min: 40,
      spread_max: 80,
      bolt_diameter: 10,
      hole_border_min: 3 * 12,
    } as const;
    const demos = filesIn('demo-data', /\.json$/).map((file) => demoPlan(basename(file, '.plan.json')));
    for (const [name, figure] of Object.entries(figures)) {
      const held = [
        inputNamed(name as keyof typeof figures)?.value,
        ...demos.map((it) => it.inputs.get(name)?.value),
      ];
      expect(held).toHaveLength(6);
      for (const value of held)
        expect([name, Math.abs(Number(value) / figure - 1) > 0.1]).toEqual([name, true]);
    }
  });

  it('the methods stay: upright against the boat and not the level, trial tubes, a sleeve as the manual shows', () => {
    const steps = JSON.stringify(orderOfWork({ ask: caseAsk(), units: 'mm' }));
    expect(steps).toContain('upright against the boat’s own centreline');
    expect(steps).toContain('trial struts');
    expect(steps).toContain('any sleeve as the gear’s manual shows');
    expect(JSON.stringify(stopPoints(caseAsk(), 'mm'))).toContain('On trial tubes');
    expect(JSON.stringify(NOTES)).toContain('the force of daily steering sets the length of a single strut');
  });
});
