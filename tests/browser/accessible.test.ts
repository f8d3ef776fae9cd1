import { describe, expect, it } from 'vitest';
import { faults, tooWide } from './axe.ts';
import { DESK, goTo, openPages, PHONE } from './page.ts';

const open = openPages();

describe('the page in its other states', () => {
  it('has none in the workbook grid, with and without an open editor', async () => {
    const { page } = await open(DESK, '#/workbook/transom_rake');
    await page.waitForSelector('[data-view="grid"] [data-input="transom_rake"]');
    expect(await faults(page)).toEqual([]);
    await page.locator('[data-view="grid"] [data-input="transom_rake"]').dblclick();
    expect(await faults(page)).toEqual([]);
  });

  it('has none while a field is refused, and with a limit opened', async () => {
    const { page } = await open(DESK);
    const field = page.locator('[data-view="form"] [data-input="shim_count"]');
    await field.fill('3.5');
    await field.press('Enter');
    await page.locator('[data-view="board"] [data-limit="rudder_gap"] button').first().click();
    await page.waitForTimeout(500);
    expect(await faults(page)).toEqual([]);
  });

  it('keeps to its window with text twice as large, at 1440, 390 and 320 px', async () => {
    for (const size of [DESK, PHONE, { width: 320, height: 640 }]) {
      const { page } = await open(size);
      if (size.width !== 320) {
        await page.evaluate(() => {
          document.documentElement.style.fontSize = '200%';
        });
      }
      for (const place of ['mount', 'checks', 'board']) {
        await goTo(page, place);
        await page.waitForTimeout(200);
        await expect
          .poll(() => tooWide(page), { message: `${place} at ${size.width}` })
          .toBeLessThanOrEqual(0);
      }
      // The worst limit keeps its whole name.
      const name = page.locator('[data-view="strip"] .strip-name').first();
      if ((await name.count()) === 0) continue;
      await expect.poll(() => name.evaluate((it) => it.scrollWidth - it.clientWidth)).toBeLessThanOrEqual(0);
    }
  }, 120_000);
});
