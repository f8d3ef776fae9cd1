import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { command } from '../support/command.ts';
import { readPdf, textOf } from '../support/read-pdf.ts';

const folder = mkdtempSync(join(tmpdir(), 'sternmount-print-'));
const out = join(folder, 'sheet.pdf');
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const print = (...args: string[]) => command('print', args);

describe('print', () => {
  it('writes a sheet of a plan and scenario', async () => {
    const {
      code,
      out: said,
      err,
    } = await print(
      ...['--plan', 'demo-data/start.plan.json', '--scenario', 'Four shims', '--sheet', 'job'],
      ...['--paper', 'letter', '--date', '2031-04-09', '--out', out],
    );
    expect(err).toBe('');
    expect(code).toBe(0);
    expect(said).toMatch(/^Job sheet: \d+ pages in /);
    const pages = await readPdf(readFileSync(out));
    expect(pages[0]?.width).toBeCloseTo(215.9, 2);
    for (const page of pages) {
      expect(textOf(page)).toContain('Four shims');
      expect(textOf(page)).toContain('2031-04-09');
    }
  });

  it('writes templates for a shop as DXF and SVG', async () => {
    for (const [ending, begins] of [
      ['dxf', '999'],
      ['svg', '<svg xmlns'],
    ] as const) {
      const file = join(folder, `templates.${ending}`);
      const { code, out: said } = await print('--sheet', 'template', '--out', file);
      expect([code, said]).toEqual([0, `Templates: at true size, in millimetres, in ${file}.\n`]);
      expect(readFileSync(file, 'utf8').trimStart().startsWith(begins)).toBe(true);
    }
  });

  it.each([
    [
      'a job sheet as a drawing',
      ['--sheet', 'job', '--out', 'job.dxf'],
      /Job sheet: this can be written as PDF alone, not as DXF/,
    ],
    ['no sheet', ['--out', out], /--sheet is missing; it takes survey, job, order, template or handover/],
    ['a sheet it does not know', ['--sheet', 'poster', '--out', out], /--sheet cannot be “poster”/],
    ['no file', ['--sheet', 'job'], /--out is missing/],
    [
      'a folder that is not there',
      ['--sheet', 'job', '--out', join(folder, 'no', 'x.pdf')],
      /cannot be written/,
    ],
    [
      'another paper',
      ['--sheet', 'job', '--out', out, '--paper', 'a5'],
      /--paper cannot be “a5”; it takes a4 or letter/,
    ],
    ['another unit', ['--sheet', 'job', '--out', out, '--units', 'ft'], /--units cannot be “ft”/],
    ['a date that is none', ['--sheet', 'job', '--out', out, '--date', '2031-02-30'], /--date cannot be/],
    [
      'a plan that is not there',
      ['--sheet', 'job', '--out', out, '--plan', 'none.json'],
      /none\.json cannot be read/,
    ],
    ['a value that cannot be', ['--sheet', 'job', '--out', out, '--set', 'shim_count=3.5'], /whole number/],
    ['a word too many', ['--sheet', 'job', '--print'], /Unknown option --print/],
  ])('refuses %s in one sentence', async (_, args, sentence) => {
    const { code, out: said, err } = await print(...args);
    expect(code).toBe(2);
    expect(said).toBe('');
    expect(err).toMatch(sentence);
    expect(err.trim().split('\n')).toHaveLength(1);
  });
});
