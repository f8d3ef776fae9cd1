import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { DESK, openPages, PHONE } from './page.ts';

const open = openPages();

/** Waits until a study of the page is worked out. */
const settled = (page: Page, view: string): Promise<unknown> =>
  page.waitForSelector(`[data-view="${view}"][aria-busy="false"]`, { timeout: 40_000 });

describe('the map', () => {
  it('tries a spot by keys as one step of undo, and keeps what it was asked', async () => {
    const { page } = await open(DESK, '#/studies/map');
    await settled(page, 'map');
    const read = page.locator('#map-read');
    await expect.poll(() => read.textContent()).toContain('3 shims with the upper bracket at 800 mm');
    await page.locator('.map-frame').focus();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowUp');
    await expect.poll(() => read.textContent()).toContain('4 shims with the upper bracket at 805 mm');
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Undo the spot tried on the map' }).click();
    await page.waitForFunction(() =>
      document.querySelector('#map-read')?.textContent?.includes('3 shims with the upper bracket at 800 mm'),
    );
    await page.getByRole('button', { name: /^Contours of/ }).click();
    await page.getByRole('combobox', { name: 'Contours of, filter' }).fill('bearing');
    await page.keyboard.press('Enter');
    const chosen = await page.getByRole('button', { name: /^Contours of/ }).textContent();
    expect(chosen).toContain('earing');
    // What a map shows changes nothing of the plan, so undo passes it over.
    expect(await page.getByRole('button', { name: 'Undo: What the map shows' }).count()).toBe(0);
    await page.reload();
    await settled(page, 'map');
    expect(await page.getByRole('button', { name: /^Contours of/ }).textContent()).toBe(chosen);
  }, 120_000);

  it('paints allowed and forbidden ground, and reads as a table', async () => {
    const { page } = await open(PHONE, '#/studies/map');
    await settled(page, 'map');
    const inked = (): Promise<number> =>
      page.evaluate(() => {
        const canvas = document.querySelector<HTMLCanvasElement>('.map-canvas');
        const data = canvas?.getContext('2d')?.getImageData(0, 0, canvas.width, canvas.height).data ?? [];
        let count = 0;
        for (let i = 3; i < data.length; i += 4) if ((data[i] ?? 0) > 128) count++;
        return count / (data.length / 4);
      });
    // The picture is painted in pieces after the answer.
    await expect.poll(inked).toBeGreaterThan(0.05);
    expect(await inked()).toBeLessThan(0.5);
    await page.locator('.map-twin summary').click();
    await expect.poll(() => page.locator('.map-table').textContent()).toContain('3, now');
    const table = await page.locator('.map-table').textContent();
    expect(table).toContain('all hold');
    expect(table).toContain('rudder gap');
  });
});

describe('proposals', () => {
  it('are found, tried as one step, and taken back', async () => {
    const { page } = await open(DESK, '#/studies/proposals');
    await page.waitForSelector('[data-view="proposals"] .proposal', { timeout: 60_000 });
    const strip = page.locator('.page-strip');
    await expect.poll(() => strip.textContent()).toContain('outside');
    await page.getByRole('button', { name: 'Try it: proposal 1' }).click();
    await page.waitForFunction(
      () => !document.querySelector('.page-strip')?.textContent?.includes('outside'),
    );
    await page.getByRole('button', { name: 'Undo the proposal tried' }).click();
    await page.waitForFunction(() => document.querySelector('.page-strip')?.textContent?.includes('outside'));
  }, 120_000);
});
