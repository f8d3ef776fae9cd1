import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { goTo, openPages } from './page.ts';

const open = openPages();

/** Longest a study may take on a busy machine, ms. */
const PATIENCE = 55_000;

const answeredStudy = (page: Page, study: string): Promise<unknown> =>
  page.waitForSelector(`[data-view="${study}"]:not([data-stale]) .type-lead`, { timeout: PATIENCE });

describe('how sure the owner may be', () => {
  it('drivers name what moves a limit; the limit asked for is no step of undo', {
    timeout: 4 * PATIENCE,
  }, async () => {
    const { page } = await open();
    await goTo(page, 'studies/drivers');
    await answeredStudy(page, 'drivers');
    const view = page.locator('[data-view="drivers"]');
    await expect
      .poll(() => view.locator('.type-lead').textContent())
      .toMatch(/would narrow the rudder gap by/);
    await expect.poll(() => view.locator('tbody tr').first().textContent()).toContain('Lean of the shaft');
    await view.getByRole('button', { name: /^Limit:/ }).click();
    await page.keyboard.type('stock');
    await page.keyboard.press('Enter');
    await answeredStudy(page, 'drivers');
    await expect.poll(() => view.locator('tbody tr').first().textContent()).toContain('speed');
    expect(await page.getByRole('button', { name: /^Undo/ }).isDisabled()).toBe(true);
  });

  it('turning values say from how many shims each limit holds', async () => {
    const { page } = await open();
    await goTo(page, 'studies/turning');
    await answeredStudy(page, 'turning');
    const row = page.locator('[data-turning="rudder_gap"]');
    await expect.poll(() => row.textContent()).toContain('is outside at first; from 4 shims it holds');
    await expect
      .poll(() => page.locator('[data-turning="shaft_face_gap"]').textContent())
      .toMatch(/None: .* stays inside by/);
  });

  it('odds stand three ways side by side, and take a shared error into account', {
    timeout: 4 * PATIENCE,
  }, async () => {
    const { page } = await open();
    await goTo(page, 'studies/odds');
    await answeredStudy(page, 'odds');
    const view = page.locator('[data-view="odds"]');
    await expect.poll(() => view.locator('.type-lead').textContent()).toMatch(/holds in .* % .*95 % sure/);
    const gap = await view.locator('[data-odds="rudder_gap"]').textContent();
    expect(gap).toMatch(/mm outside.*%.*%/);
    await view.getByText('wholly').click();
    await answeredStudy(page, 'odds');
    await expect.poll(() => view.locator('[data-odds="rudder_gap"]').textContent()).not.toBe(gap);
    await view.getByText('not at all').click();
    await answeredStudy(page, 'odds');
    await expect.poll(() => view.locator('[data-odds="rudder_gap"]').textContent()).toBe(gap);
    const foot = await view.locator('p').last().textContent();
    expect(foot).toMatch(/readings are spread evenly across their ±.*Left out: a misread figure/);
  });
});
