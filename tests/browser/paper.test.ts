import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { readPdf, textOf } from '../support/read-pdf.ts';
import { DESK, openPages, PHONE } from './page.ts';

const open = openPages();

const folder = mkdtempSync(join(tmpdir(), 'sternmount-paper-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('the page Paper', () => {
  it.each([
    ['at a desk', DESK],
    ['on a phone', PHONE],
  ])('shows a sheet as it will be printed, and saves it as PDF, %s', async (_, size) => {
    const { page } = await open(size, '#/paper');
    await page.getByLabel('Job sheet').check();
    await page.getByLabel('Letter').check();
    const sheets = page.locator('[data-view="paper"] figure');
    await expect.poll(() => sheets.count(), { timeout: 30_000 }).toBe(2);
    await expect.poll(() => sheets.first().textContent(), { timeout: 30_000 }).toContain('Holes');
    await page.waitForFunction(() => document.querySelector('.paper-sheets[data-stale]') === null);
    const coming = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save as PDF' }).click();
    const file = await coming;
    expect(file.suggestedFilename()).toBe('reverse-transom-job.pdf');
    const saved = join(folder, `${size.width}.pdf`);
    await file.saveAs(saved);
    const pages = await readPdf(readFileSync(saved));
    expect(pages).toHaveLength(2);
    expect(pages[0]?.width).toBeCloseTo(215.9, 2);
    expect(textOf(pages[0] ?? { width: 0, height: 0, texts: [], paths: [], colours: new Set() })).toContain(
      'Three shims',
    );
    await expect
      .poll(() => page.locator('.paper-save').textContent(), { timeout: 15_000 })
      .toContain('reverse-transom-job.pdf');
  });

  it('follows an edit', async () => {
    const { page } = await open(DESK, '#/paper');
    await page.getByLabel('Job sheet').check();
    const second = page.locator('[data-view="paper"] figure').nth(1);
    await expect
      .poll(() => second.locator('svg').textContent(), { timeout: 30_000 })
      .toContain('5.3 mm short');
    await page.getByLabel('Scenario').selectOption('Four shims');
    await expect
      .poll(() => second.locator('svg').textContent(), { timeout: 30_000 })
      .not.toContain('5.3 mm short');
  });
});
