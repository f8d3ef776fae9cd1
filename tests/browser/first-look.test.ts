import { describe, expect, it } from 'vitest';
import { cellValue, DESK, goTo, onePage, openPages, PHONE, stateOf, TABLET } from './page.ts';

const open = openPages();

describe('the page at first', () => {
  const shown = onePage();

  it('says what is outside, why, and by how much', async () => {
    const page = shown();
    await expect.poll(() => stateOf(page, 'rudder_gap')).toBe('outside');
    const text = (await page.locator('[data-view="lead"]').textContent()) ?? '';
    expect(text).toContain('The two rudders pass 44.7 mm apart');
    expect(text).toContain('you asked for at least 50 mm');
    await goTo(page, 'checks');
    await expect.poll(() => cellValue(page, 'results', 'rudder_gap')).toBeCloseTo(44.7009, 4);
  });

  it.each([
    ['1440', DESK],
    ['1024', TABLET],
    ['390', PHONE],
  ])('is no wider than its window at %s px', async (_, size) => {
    const { page } = await open(size);
    const wider = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(wider).toBeLessThanOrEqual(0);
  });

  it('prints its drawing and its title block within the paper', async () => {
    const page = shown();
    await goTo(page, 'mount');
    await page.locator('[data-view="drawing"] svg').waitFor();
    await page.emulateMedia({ media: 'print' });
    await page.setViewportSize({ width: 660, height: 980 });
    const over = await page.evaluate(() =>
      ['.drawing-sheet > svg', '[data-view="title"]'].map((it) => {
        const box = document.querySelector(it)?.getBoundingClientRect();
        return box === undefined ? Number.NaN : box.right - document.documentElement.clientWidth;
      }),
    );
    expect(Math.max(...over)).toBeLessThanOrEqual(0);
  });
});
