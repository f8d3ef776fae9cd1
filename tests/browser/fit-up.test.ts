import { text } from 'node:stream/consumers';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { answered, DESK, goTo, openPages, PHONE, type Size } from './page.ts';

const open = openPages();

const put = async (page: Page, hook: string, typed: string): Promise<void> => {
  const field = page.locator(`[data-view="fit-up"] ${hook} input`).first();
  await field.fill(typed);
  await field.press('Enter');
};

const tick = (page: Page, step: string): Promise<void> =>
  page.locator(`[data-view="fit-up"] [data-step="${step}"] input`).click();

const part = (page: Page, word: string): Promise<void> =>
  page.locator('[data-view="fit-up"] nav').getByRole('link', { name: word }).click();

/** Figures the page shows for a strut to cut. */
const cut = async (page: Page, side: string): Promise<number> =>
  Number(await page.locator(`[data-cut="${side}"]`).getAttribute('data-value'));

async function theDay(size: Size): Promise<void> {
  const { page } = await open(size);
  await goTo(page, 'checks');
  await page.getByRole('link', { name: 'Fit-up' }).click();
  await page.getByLabel('Who is at work').fill('R. at the yard');
  await page.getByLabel('Who is at work').press('Enter');

  // A thickness that is not the planned one is said to stop the work.
  await tick(page, 'inside');
  await tick(page, 'cloth');
  await put(page, '[data-reading="pilot"]', '24 mm');
  await expect
    .poll(() => page.locator('[data-reading="pilot"] [role="status"]').textContent())
    .toContain('Not met');
  await put(page, '[data-reading="pilot"]', '18.5 mm');
  await expect
    .poll(() => page.locator('[data-reading="pilot"] [role="status"]').textContent())
    .toMatch(/^Met/);
  await tick(page, 'pilot');
  await expect.poll(() => page.locator('[data-step="pilot"]').textContent()).toContain('R. at the yard');

  // A drilled hole is locked, and the form will not move it.
  await tick(page, 'first_hole');
  await page.getByRole('button', { name: 'Lock as drilled' }).first().click();
  await goTo(page, 'mount');
  const drilled = page.locator('[data-view="form"] [data-input="lower_bracket_height"]').first();
  await drilled.waitFor({ state: 'attached' });
  await expect.poll(() => drilled.getAttribute('readonly')).not.toBeNull();

  await goTo(page, 'fit-up/stops');
  await tick(page, 'stop_second_hole');
  await expect
    .poll(() => page.locator('[data-step="stop_second_hole"]').getAttribute('data-done'))
    .not.toBeNull();

  await part(page, 'As fitted');
  await page.waitForSelector('[data-cut="port"]');
  const planned = await cut(page, 'port');
  await put(page, '[data-fitted="port_foot_y"]', '-178 mm');
  await put(page, '[data-fitted="upper_bracket_height"]', '890 mm');
  await page.waitForSelector('[data-fitted-limit="drive_headroom"]');
  await expect
    .poll(() => page.locator('[data-fitted-limit="drive_headroom"]').getAttribute('data-state'))
    .toBe('inside');
  await put(page, '[data-fitted="upper_bracket_height"]', '900 mm');
  await page.waitForSelector('[data-fitted-limit="drive_headroom"][data-state="outside"]');
  await expect.poll(() => cut(page, 'port')).toBeGreaterThan(planned);
  await expect.poll(() => page.locator('[data-cut="port"]').textContent()).toMatch(/±.*Cut \d+ mm/);

  // By hand: atan(16/550) = 1.67° to starboard, less a list of 1.5° leaves 0.17°.
  for (const [name, typed] of [
    ['bob_apart', '550 mm'],
    ['bob_aft_top', '66 mm'],
    ['bob_aft_foot', '60 mm'],
    ['bob_side_top', '40 mm'],
    ['bob_side_foot', '24 mm'],
  ] as const) {
    await put(page, `[data-reading="${name}"]`, typed);
  }
  const stands = page.locator('section[aria-label="How the shaft stands"]');
  await expect.poll(() => stands.textContent()).toContain('Stop: to the side');
  await put(page, '[data-reading="lie_list"]', '1.5');
  await put(page, '[data-reading="lie_trim"]', '0');
  await expect.poll(() => stands.textContent()).toContain('is allowed: met');
  await expect
    .poll(async () => Number(await page.locator('[data-side]').getAttribute('data-side')))
    .toBeCloseTo(0.166, 2);
  await page.getByRole('button', { name: /as the lean fitted/ }).click();
  await expect.poll(() => page.locator('[data-fitted="shaft_lean"]').getAttribute('data-value')).toBe('0.62');

  await part(page, 'Handover record');
  const to = page.locator('[data-input="handover_handed_to"]');
  await to.fill('M.');
  await to.press('Enter');
  await page.reload();
  await answered(page);
  await page.waitForSelector('.fit-up-record');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as text' }).click();
  const record = await text(await (await download).createReadStream());
  for (const words of [
    'R. at the yard',
    'Handed over to: M.',
    'After the first sail',
    'Pilot the first hole',
  ]) {
    expect(record).toContain(words);
  }
  expect(record).toMatch(/Height of the upper bracket: 900 mm.*planned 800 mm/);
  expect(record).not.toMatch(/\bsafe\b/i);
}

describe('the day of the work', () => {
  it('goes from the first tick to the handover record at 1440 px', () => theDay(DESK), 120_000);

  it('goes the same way on a phone, the stop points on one screen', async () => {
    await theDay(PHONE);
    const { page } = await open(PHONE, '#/fit-up/stops');
    await page.waitForSelector('.fit-up-stops');
    await page.waitForTimeout(300);
    const list = await page.locator('.fit-up-stops').boundingBox();
    const [strip, bar] = [page.locator('.page-strip'), page.locator('.page-bar')];
    const top = await strip.boundingBox();
    const foot = await bar.boundingBox();
    if (list === null || top === null || foot === null) throw new Error('The stop points are not shown.');
    expect(list.y).toBeGreaterThanOrEqual(top.y + top.height);
    expect(list.y + list.height).toBeLessThanOrEqual(foot.y);
    for (const row of await page.locator('.fit-up-stops .fit-up-tick').all()) {
      await expect.poll(async () => (await row.boundingBox())?.height).toBeGreaterThanOrEqual(56);
    }
  }, 120_000);
});
