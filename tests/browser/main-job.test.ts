import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { answered, cellValue, DESK, goTo, openPages, stateOf } from './page.ts';

const open = openPages();

const press = async (page: Page, name: string, direction: 'up' | 'down', times = 1): Promise<void> => {
  const button = page
    .locator(`[data-view="form"] [data-cell="${name}"] button.stepper`)
    .nth(direction === 'up' ? 1 : 0);
  for (let i = 0; i < times; i++) await button.click();
};

const share = async (page: Page): Promise<number> => {
  await goTo(page, 'loads');
  const value = await cellValue(page, 'results', 'bolt_utilisation');
  await goTo(page, 'mount');
  return value;
};

const lead = async (page: Page): Promise<string> =>
  (await page.locator('[data-view="lead"]').first().textContent()) ?? '';

describe('the job, in the form', () => {
  it('adds a shim, raises the bracket too far, keeps both as scenarios, and finds them after a reload', async () => {
    const { page } = await open(DESK);
    await page.waitForFunction(() =>
      document.querySelector('[data-view="lead"]')?.textContent?.includes('Four shims would give'),
    );
    await expect.poll(() => lead(page)).toContain('The two rudders pass 44.7 mm apart');
    await expect.poll(() => lead(page)).toContain('Four shims would give 56.9 mm');
    const before = await share(page);

    await press(page, 'shim_count', 'up');
    await expect.poll(() => cellValue(page, 'form', 'shim_count')).toBe(4);
    await expect.poll(() => stateOf(page, 'rudder_gap')).toBe('near');
    await expect.poll(() => share(page)).toBeGreaterThan(before);

    const field = page.locator('[data-view="form"] [data-input="upper_bracket_height"]');
    await field.fill('860');
    await field.press('Enter');
    await expect.poll(() => stateOf(page, 'drive_headroom')).toBe('inside');
    await field.fill('35 7/16 in');
    await field.press('Enter');
    await expect.poll(() => cellValue(page, 'form', 'upper_bracket_height')).toBeCloseTo(900.1125, 9);
    await expect.poll(() => stateOf(page, 'drive_headroom')).toBe('outside');

    await page.reload();
    await answered(page);
    await expect.poll(() => cellValue(page, 'form', 'shim_count')).toBe(4);
    await expect.poll(() => stateOf(page, 'drive_headroom')).toBe('outside');

    // Undo survives the reload.
    await page.locator('[data-view="title"]').getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => stateOf(page, 'drive_headroom')).toBe('inside');
  });

  it('takes edits back and forth', async () => {
    const { page } = await open(DESK);
    await press(page, 'shim_count', 'up', 2);
    await expect.poll(() => cellValue(page, 'form', 'shim_count')).toBe(5);
    await page.locator('[data-view="title"]').getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => cellValue(page, 'form', 'shim_count')).toBe(4);
    await page.locator('[data-view="title"]').getByRole('button', { name: 'Redo' }).click();
    await expect.poll(() => cellValue(page, 'form', 'shim_count')).toBe(5);
  });

  it('offers the nearest mount where no single change helps, with one press', async () => {
    const { page } = await open(DESK);
    const field = page.locator('[data-view="form"] [data-input="rudder_gap_min"]');
    await field.fill('150');
    await field.press('Enter');
    const board = page.locator('[data-view="board"]');
    await board.locator('[data-limit="rudder_gap"] button').first().click();
    await expect
      .poll(() => board.textContent())
      .toContain('No single change to the mount or its parts fixes this.');
    const outside = board.locator('[data-state="outside"]');
    const before = await outside.count();
    await board.getByRole('button', { name: 'Use this mount' }).click({ timeout: 60_000 });
    await board.getByRole('button', { name: 'Undo the remedy tried' }).waitFor();
    expect(await outside.count()).toBeLessThanOrEqual(before);
  });

  it('tries what mends a limit, with undo', async () => {
    const { page } = await open(DESK);
    await page.locator('[data-view="board"] [data-limit="rudder_gap"] button').first().click();
    await page.getByRole('button', { name: 'Try it: Shims under the lower bracket' }).click();
    await expect.poll(() => cellValue(page, 'form', 'shim_count')).toBe(4);
    await expect.poll(() => stateOf(page, 'rudder_gap')).not.toBe('outside');
    await page.locator('[data-view="title"]').getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => stateOf(page, 'rudder_gap')).toBe('outside');
  });
});
