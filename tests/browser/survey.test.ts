import { describe, expect, it } from 'vitest';
import { faults } from './axe.ts';
import { answered, cellValue, DESK, goTo, openPages, PHONE, stateOf } from './page.ts';

const open = openPages();

/** A face that stands 20° aft of plumb, read with the stern 1° deep: the boat's own rake is 19°. */
const RISE = Math.tan((20 * Math.PI) / 180);
const ROWS = [0, 150, 300, 450, 600, 750].map((z) => `${z}\t${(700 - z * RISE).toFixed(1)}`).join('\n');
const DEEP = (8000 * Math.tan(Math.PI / 180)).toFixed(2);

describe('the survey', () => {
  it('is filled at a desk, and Boat follows it', async () => {
    const { page } = await open(DESK, '#/survey');
    const table = page.locator('[data-table="transom_readings"]');
    await table.getByRole('button', { name: /Paste rows/ }).click();
    // The heading stays in its column over the box.
    const wide = async (place: string) => (await table.locator(place).boundingBox())?.width ?? 0;
    await expect.poll(async () => (await wide('h3')) - (await wide('textarea'))).toBe(0);
    await table.locator('textarea').fill('0;700\nlow;690');
    await table.getByRole('button', { name: 'Put these rows in' }).click();
    await expect.poll(() => table.getByRole('alert').textContent()).toContain('Height in line 2');
    await table.locator('textarea').fill(ROWS);
    await table.getByRole('button', { name: 'Put these rows in' }).click();
    await expect.poll(() => table.locator('[data-row]').count()).toBe(6);

    const stern = page.locator('[data-input="trim_mark_stern"]');
    await stern.fill(DEEP);
    await stern.press('Enter');
    await page
      .getByRole('button', { name: /let Boat follow it.*Slope of the transom/ })
      .first()
      .click();
    await goTo(page, 'boat');
    await answered(page);
    await expect.poll(() => cellValue(page, 'form', 'transom_rake')).toBeCloseTo(19, 1);

    // One row measured again moves Boat, and undo takes it back.
    await goTo(page, 'survey');
    const top = page.locator('[data-input="transom_readings.6.distance"]');
    await top.fill('380');
    await top.press('Enter');
    await goTo(page, 'boat');
    await expect.poll(() => cellValue(page, 'form', 'transom_rake')).toBeGreaterThan(19.5);
    await page.getByRole('button', { name: 'Undo' }).first().click();
    await expect.poll(() => cellValue(page, 'form', 'transom_rake')).toBeCloseTo(19, 1);
  });

  it('points a suspicious row out, takes it away and brings it back', async () => {
    const { page } = await open(DESK, '#/survey');
    const table = page.locator('[data-table="transom_readings"]');
    await table.getByRole('button', { name: /Paste rows/ }).click();
    await table.locator('textarea').fill(`${ROWS}\n900\t450`);
    await table.getByRole('button', { name: 'Put these rows in' }).click();
    const bad = table.locator('[data-row="7"][data-suspicious]');
    await bad.waitFor();
    await expect.poll(() => bad.textContent()).toContain('far outside the rest');
    await bad.getByRole('button', { name: /take away/ }).click();
    await expect.poll(() => table.locator('[data-row]').count()).toBe(6);
    await table.getByRole('button', { name: /Undo: bring row 7 back/ }).click();
    await expect.poll(() => table.locator('[data-row]').count()).toBe(7);
  });

  it('judges a keep-out once it is listed', async () => {
    const { page } = await open(DESK, '#/survey');
    const table = page.locator('[data-table="keep_outs_outside"]');
    await table.getByRole('button', { name: /Paste rows/ }).click();
    await table.locator('textarea').fill('-250; -190; 700; 800');
    await table.getByRole('button', { name: 'Put these rows in' }).click();
    await page.waitForFunction(
      () =>
        document.querySelector('[data-limit="port_foot_clear"]')?.getAttribute('data-state') === 'outside',
    );
    await expect.poll(() => stateOf(page, 'port_foot_clear')).toBe('outside');
  });

  it('shows one row a screenful on a phone, each with its picture', async () => {
    const { page } = await open(PHONE, '#/survey');
    await page.getByRole('link', { name: /^Plumb line to the transom/ }).click();
    const table = page.locator('[data-table="transom_readings"]');
    await table.getByRole('button', { name: /First row/ }).click();
    const height = page.locator('[data-input="transom_readings.1.height"]');
    await expect.poll(() => height.evaluate((it) => it === document.activeElement)).toBe(true);
    await height.fill('2 3/8 in');
    await height.press('Enter');
    await expect.poll(() => height.inputValue()).toBe('60.325');
    await table.getByRole('button', { name: /Another row/ }).click();
    await expect.poll(() => table.locator('[data-row] svg.scene').count()).toBe(2);
    // Row, picture and all, stands between strip and bar.
    await expect
      .poll(() =>
        table
          .locator('[data-row="2"]')
          .evaluate(
            (it) => it.clientHeight <= window.innerHeight && it.clientHeight > window.innerHeight / 2,
          ),
      )
      .toBe(true);
    expect(await faults(page, '[data-view="survey"]')).toEqual([]);
    await page.getByRole('link', { name: /^All parts/ }).click();
    await expect.poll(() => page.locator('.survey-parts').textContent()).toContain('2 rows');
    await page.getByRole('link', { name: /^How the boat lies/ }).click();
    await page.locator('[data-cell="trim_mark_stern"] svg.scene').waitFor();
    const overflow = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(overflow).toBeLessThanOrEqual(0);
  });
});
