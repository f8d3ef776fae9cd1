import { describe, expect, it } from 'vitest';
import { answered, openPages, PHONE } from './page.ts';

const open = openPages();

describe('plan my own boat, at 390 px', () => {
  it('asks four questions and twelve readings, skips some into stand-ins, and ends at the board', async () => {
    const { page } = await open(PHONE, '#/own-boat');
    const root = page.locator('[data-view="own-boat"]');
    const next = root.getByRole('button', { name: 'Next' });

    for (const word of ['in', 'ashore', 'forward', 'yes'])
      await root.locator(`[data-answer="${word}"]`).click();

    // A leaning transom is typed without its sign; the question has said which way.
    await root.locator('[data-input="transom_rake"]').fill('10');
    await next.click();
    await root.locator('[data-input="transom_top"]').fill('35 7/16');
    await next.click();

    // A refusal keeps the text and says why; going back and on again loses nothing.
    const field = root.locator('[data-input="transom_bottom"]');
    await field.fill('2 3/0');
    await next.click();
    await expect.poll(() => root.getByRole('status').textContent()).toMatch(/cannot be 0/);
    await expect.poll(() => field.getAttribute('aria-invalid')).toBe('true');
    await expect.poll(() => field.inputValue()).toBe('2 3/0');
    await field.fill('1 1/2');
    await root.getByRole('button', { name: 'Back' }).click();
    await expect.poll(() => root.locator('[data-input="transom_top"]').inputValue()).toBe('35 7/16');
    await next.click();
    await expect.poll(() => field.inputValue()).toBe('1 1/2');
    await next.click();

    // A phone drops a page that is not looked at: what was typed is still there.
    await page.reload();
    await answered(page);
    await expect.poll(() => root.locator('[data-input]').count()).toBe(1);

    let skipped = 0;
    while ((await root.getByRole('button', { name: /^Take the stand-in/ }).count()) > 0) {
      await root.getByRole('button', { name: /^Take the stand-in/ }).click();
      skipped++;
    }
    expect(skipped).toBe(9);

    const rests = Number(await root.locator('[data-stand-ins]').getAttribute('data-stand-ins'));
    expect(rests).toBeGreaterThan(50);
    await root.getByRole('button', { name: 'See the limits' }).click();
    await page.waitForSelector('[data-view="board"] [data-limit]');
    await expect
      .poll(async () => (await page.locator('[data-view="title"]').textContent()) ?? '')
      .toContain(`${rests} stand-ins`);

    await page.evaluate(() => {
      window.location.hash = '#/boat';
    });
    const rake = page.locator('[data-view="form"] [data-name="transom_rake"]');
    await expect.poll(async () => Number(await rake.getAttribute('data-value'))).toBe(-10);
    const top = page.locator('[data-view="form"] [data-name="transom_top"]');
    await expect
      .poll(async () => Number(await top.getAttribute('data-value')))
      .toBeCloseTo(35.4375 * 25.4, 9);
  });
});
