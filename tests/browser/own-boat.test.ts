import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { answered, DESK, goTo, openPages, PHONE, type Size } from './page.ts';

const open = openPages();

interface Boat {
  readonly units: 'mm' | 'in';
  readonly lean: 'aft' | 'upright' | 'forward';
  /** The twelve readings as they are typed. */
  readonly typed: Readonly<Record<string, string>>;
}

/** A deep transom raked aft, the boat's own rudder well under the hull. */
const RAKED: Boat = {
  units: 'mm',
  lean: 'aft',
  typed: {
    transom_rake: '12',
    transom_top: '1080',
    transom_bottom: '-20',
    transom_thickness: '26',
    main_rudder_head: '-180',
    main_rudder_foot: '-1350',
    rudder_overhang: '-40',
    rudder_overhang_foot: '-10',
    boat_speed: '7.5',
    shaft_length: '1150',
    lower_reach: '190',
    vane_rudder_balance: '48',
  },
};

/** A reverse transom in inches, the boat's own rudder reaching aft of it. */
const REVERSE: Boat = {
  units: 'in',
  lean: 'forward',
  typed: {
    transom_rake: '18',
    transom_top: '36 1/4',
    transom_bottom: '1 1/2',
    transom_thickness: '7/8',
    main_rudder_head: '-3 1/2',
    main_rudder_foot: '-46',
    rudder_overhang: '1 1/8',
    rudder_overhang_foot: '2',
    boat_speed: '7.25',
    shaft_length: '43 1/2',
    lower_reach: '7 5/8',
    vane_rudder_balance: '1 7/8',
  },
};

async function planned({ units, lean, typed }: Boat, size: Size): Promise<Page> {
  const { page } = await open(size, '#/own-boat');
  const root = page.locator('[data-view="own-boat"]');
  for (const word of [units, 'afloat', lean, 'yes']) await root.locator(`[data-answer="${word}"]`).click();
  for (const [name, text] of Object.entries(typed)) {
    await root.locator(`[data-input="${name}"]`).fill(text);
    await root.getByRole('button', { name: 'Next' }).click();
  }
  return page;
}

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

describe.each([
  { name: 'a raked transom in mm', boat: RAKED, size: DESK },
  { name: 'a reverse transom in inches, at 390 px', boat: REVERSE, size: PHONE },
])('plan my own boat: $name', ({ boat, size }) => {
  it('ends with a mount for that boat that keeps every limit, as one step of undo', async () => {
    const page = await planned(boat, size);
    const root = page.locator('[data-view="own-boat"]');
    const mount = root.locator('[data-mount]');
    await mount.waitFor({ timeout: 60_000 });
    expect(await mount.getAttribute('data-mount')).toBe('0');
    await expect.poll(() => mount.textContent()).toContain('It meets every limit.');
    await root.getByRole('button', { name: 'See the limits' }).click();
    await page.waitForSelector('[data-view="board"] [data-limit]');
    for (const state of ['outside', 'no answer'])
      expect(await page.locator(`[data-view="board"] [data-state="${state}"]`).count()).toBe(0);

    await goTo(page, 'mount');
    const upper = page.locator('[data-view="form"] [data-name="upper_bracket_height"]').first();
    const height = Number(await upper.getAttribute('data-value'));
    const steps = height / (boat.units === 'in' ? 6.35 : 5);
    expect(Math.abs(steps - Math.round(steps))).toBeLessThan(1e-9);
    // Nothing is left of the boat that was open before but its plan, one undo away.
    expect(height).not.toBe(800);
    await goTo(page, 'board');
    await page.locator('[data-view="title"]').getByRole('button', { name: /^Undo/ }).click();
    await goTo(page, 'mount');
    await expect.poll(async () => Number(await upper.getAttribute('data-value'))).toBe(800);
  }, 120_000);
});
