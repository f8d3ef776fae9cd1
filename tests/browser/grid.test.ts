import type { Locator, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { answered, cellValue, DESK, goTo, openPages, stateOf } from './page.ts';

const open = openPages();

/** A cell of the table, scrolled into sight by its keys: rows out of sight are not drawn. */
async function cell(page: Page, name: string): Promise<Locator> {
  const found = page.locator(`[data-view="grid"] [data-name="${name}"]`).first();
  await page.locator('[data-view="grid"] [data-name]').first().click();
  for (let i = 0; i < 60 && (await found.count()) === 0; i++) await page.keyboard.press('PageDown');
  return found;
}

const valueIn = async (page: Page, name: string): Promise<number> =>
  Number(await (await cell(page, name)).getAttribute('data-value'));

const back = (page: Page): Promise<void> => page.keyboard.press('Control+Home');

describe('the job, in the workbook grid', () => {
  it('changes choices by keys, refuses what cannot be, undoes, and keeps all over a reload', async () => {
    const { page } = await open(DESK, '#/workbook');
    await page.waitForSelector('[data-view="grid"] [data-input]');

    const shims = await cell(page, 'shim_count');
    await shims.click();
    await page.keyboard.type('4');
    await page.keyboard.press('Enter');
    await expect.poll(() => shims.getAttribute('data-value')).toBe('4');

    await shims.click();
    await page.keyboard.type('3.5');
    await page.keyboard.press('Enter');
    await expect.poll(() => shims.getAttribute('data-value')).toBe('4');
    await expect.poll(() => shims.getAttribute('aria-invalid')).toBe('true');
    await expect.poll(() => shims.textContent()).toContain('3.5');
    await shims.click();
    await page.keyboard.type('4');
    await page.keyboard.press('Enter');
    await expect.poll(() => shims.getAttribute('aria-invalid')).not.toBe('true');

    await back(page);
    const bracket = await cell(page, 'upper_bracket_height');
    await bracket.click();
    await page.keyboard.type('900');
    await page.keyboard.press('Enter');
    await expect.poll(() => bracket.getAttribute('data-value')).toBe('900');
    await back(page);
    await expect.poll(() => valueIn(page, 'drive_headroom')).toBe(-20);

    await page.keyboard.press('Control+z');
    await goTo(page, 'mount');
    await expect.poll(() => cellValue(page, 'form', 'upper_bracket_height')).toBe(800);
    await expect.poll(() => cellValue(page, 'form', 'shim_count')).toBe(4);
    await expect.poll(() => stateOf(page, 'drive_headroom')).toBe('inside');
    await expect.poll(() => stateOf(page, 'rudder_gap')).toBe('near');

    await goTo(page, 'workbook');
    await page.reload();
    await answered(page);
    await page.waitForSelector('[data-view="grid"] [data-input]');
    await expect.poll(() => valueIn(page, 'shim_count')).toBe(4);
  });

  it('opens on the old text at two clicks, and not where typing lies between them', async () => {
    const { page } = await open(DESK, '#/workbook');
    await page.waitForSelector('[data-view="grid"] [data-input]');
    const shims = await cell(page, 'shim_count');
    const editor = page.locator('.handsontableInput').first();
    await shims.click();
    const box = await shims.boundingBox();
    if (box === null) throw new Error('the cell is out of sight');
    const at = [box.x + box.width / 2, box.y + box.height / 2] as const;
    await page.waitForTimeout(600);
    // As quick as a hand can be: within the half second that makes two clicks a pair.
    await page.mouse.click(...at);
    await page.keyboard.press('4');
    await page.keyboard.press('Enter');
    await page.mouse.click(...at);
    await page.keyboard.press('5');
    await page.keyboard.press('Enter');
    await expect.poll(() => shims.getAttribute('data-value')).toBe('5');
    await page.waitForTimeout(600);
    await shims.dblclick();
    await expect.poll(() => editor.inputValue()).toBe('5');
  });
});
