import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { openPlan } from '../../src/plan/file/open-plan.ts';
import { cellValue, DESK, goTo, openPages } from './page.ts';

const open = openPages();

describe('scenarios and the plan file', () => {
  it('keeps the present choices, compares, switches, deletes, and undoes', async () => {
    const { page } = await open(DESK, '#/scenarios');
    const root = page.locator('[data-view="scenarios"]');
    await root.getByLabel('Name for the choices as they stand now').fill('Evening idea');
    await root.getByRole('button', { name: 'Keep as a scenario' }).click();
    await page.waitForFunction(() =>
      document.querySelector('[data-view="scenarios"]')?.textContent?.includes('Evening idea'),
    );
    await expect
      .poll(() => page.locator('[data-view="title"] select').first().inputValue())
      .toBe('Evening idea');
    await goTo(page, 'mount');
    const field = page.locator('[data-view="form"] [data-input="shim_count"]');
    await field.fill('5');
    await field.press('Enter');
    await page.locator('[data-view="title"] select').first().selectOption('Three shims');
    await expect.poll(() => cellValue(page, 'form', 'shim_count')).toBe(3);
    await page.locator('[data-view="title"] select').first().selectOption('Evening idea');
    await expect.poll(() => cellValue(page, 'form', 'shim_count')).toBe(5);
  });

  it('saves a file that opens again, and sends a short letter', async () => {
    const { page } = await open(DESK, '#/plan');
    const root = page.locator('[data-view="plan"]');
    const saved = page.waitForEvent('download');
    await root.getByRole('button', { name: 'Save as a file' }).click();
    const download = await saved;
    expect(download.suggestedFilename()).toMatch(/\.plan\.json$/);
    const folder = mkdtempSync(join(tmpdir(), 'sternmount-saved-'));
    const file = join(folder, 'saved.plan.json');
    await download.saveAs(file);
    const opened = openPlan(readFileSync(file, 'utf8'));
    rmSync(folder, { recursive: true });
    expect(opened.ok && opened.plan.scenarios.map((it) => it.name)).toEqual([
      'Three shims',
      'Four shims',
      'Upper bracket raised',
    ]);
    const link = (await root.locator('a[href^="mailto:"]').first().getAttribute('href')) ?? '';
    expect(link.length).toBeGreaterThan(100);
    expect(link.length).toBeLessThanOrEqual(1500);
  });
});
