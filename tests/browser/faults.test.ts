import { text } from 'node:stream/consumers';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { openPlan } from '../../src/plan/file/open-plan.ts';
import { readingOf } from '../../src/plan/plan.ts';
import { goTo, openPages, stateOf } from './page.ts';

const ENGINE = /\/assets\/engine-[^/]*\.js$/;

const plate = (page: Page) => page.locator('.plate');

/** Serves the engine with a switch in it: while the page's `engineFails` is set, every change throws. */
async function withFailingEngine(page: Page): Promise<void> {
  await page.route(ENGINE, async (route) => {
    const answer = await fetch(route.request().url());
    const source = await answer.text();
    const failing = source.replace(
      /([\s;}])batch\((\w+)\)\{/,
      '$1batch($2){if(globalThis.engineFails)throw new Error("injected");',
    );
    if (failing === source) throw new Error('The engine has no place for the switch.');
    // The page may have been closed meanwhile.
    await route.fulfill({ body: failing, contentType: 'text/javascript' }).catch(() => undefined);
  });
}

const setFailing = (page: Page, fails: boolean): Promise<void> =>
  page.evaluate((it) => {
    (globalThis as { engineFails?: boolean }).engineFails = it;
  }, fails);

const press = async (page: Page, word: string): Promise<void> => {
  await page.getByRole('button', { name: word }).first().click();
};

const stepUp = (page: Page): Promise<void> =>
  page.locator('[data-input="shim_count"]').first().press('ArrowUp');

describe('a fault', () => {
  const open = openPages();

  it('of the engine blanks every number, says so, and keeps what was typed', async () => {
    const { page } = await open();
    await withFailingEngine(page);
    await page.reload();
    await expect.poll(() => stateOf(page, 'rudder_gap')).toMatch(/outside|near|inside/);
    await setFailing(page, true);
    const field = page.locator('[data-input="shim_count"]').first();
    const before = Number(await field.inputValue());
    await field.fill(String(before + 1));
    await field.press('Enter');
    await expect.poll(() => plate(page).textContent()).toContain('stopped: injected.');
    expect(await stateOf(page, 'rudder_gap')).toBe('no answer');
    expect(await page.locator('[data-limit][data-state="inside"]').count()).toBeLessThan(4);
    expect(await field.inputValue()).toBe(String(before + 1));
    const [file] = await Promise.all([page.waitForEvent('download'), press(page, 'Save the plan as a file')]);
    expect(file.suggestedFilename()).toMatch(/\.plan\.json$/);
    await setFailing(page, false);
    await press(page, 'Try again');
    await expect.poll(() => plate(page).count()).toBe(0);
    await expect.poll(() => stateOf(page, 'rudder_gap')).toMatch(/outside|near|inside/);
    // What was typed while nothing was worked out is there after a reload.
    await expect.poll(() => page.locator('.title-kept').textContent()).toContain('in this browser');
    await page.reload();
    await expect.poll(() => field.inputValue()).toBe(String(before + 1));
  });

  it('of an engine that cannot be loaded is said, and trying again mends it', async () => {
    const { page } = await open();
    await page.route(ENGINE, (route) => route.abort());
    await page.reload();
    await expect.poll(() => plate(page).textContent()).toContain('could not be loaded.');
    await stepUp(page);
    await page.unroute(ENGINE);
    await press(page, 'Try again');
    await expect.poll(() => plate(page).count()).toBe(0);
    await expect.poll(() => stateOf(page, 'rudder_gap')).toMatch(/outside|near|inside/);
  });

  it('of the page itself leaves the plan, which can be saved', async () => {
    const { page } = await open();
    await expect.poll(() => page.locator('.title-kept').textContent()).toContain('in this browser');
    const field = page.locator('[data-input="shim_count"]').first();
    await field.fill('5');
    await page.evaluate(() => {
      Date.prototype.toLocaleTimeString = () => {
        throw new Error('injected');
      };
    });
    await field.press('Enter');
    await expect.poll(() => plate(page).textContent()).toContain('It stopped: injected.');
    const [file] = await Promise.all([page.waitForEvent('download'), press(page, 'Save the plan as a file')]);
    const saved = openPlan(await text(await file.createReadStream()));
    expect(saved.ok && readingOf(saved.plan, 'shim_count')?.value).toBe(5);
    await press(page, 'Load the page again');
    await expect.poll(() => field.inputValue()).toBe('5');
  });

  it('of a part that cannot be loaded is said in its place, and trying again mends it', async () => {
    const { page } = await open();
    await page.route(/\/assets\/.*\.(js|css)$/, (route) => route.abort());
    await goTo(page, 'paper');
    const stub = page.locator('.page-stub', { hasText: 'The sheets could not be loaded.' });
    await stub.waitFor();
    await page.unroute(/\/assets\/.*\.(js|css)$/);
    await stub.getByRole('button', { name: 'Try again' }).click();
    await page.locator('[data-view="paper"]').waitFor();
    expect(await stub.count()).toBe(0);
  });

  it.each([
    ['dies', 'self.close()'],
    ['throws', 'throw new Error("injected")'],
  ])('of a studies’ worker that %s is noticed within a second, and its study answers', async (_, end) => {
    const { page } = await open();
    await expect.poll(() => page.workers().length).toBe(1);
    await page.evaluate(() => {
      const seen = new Promise<number>((done) => {
        new MutationObserver(() => {
          if (document.querySelector('.plate')?.textContent?.includes('started again')) done(Date.now());
        }).observe(document.body, { childList: true, subtree: true });
      });
      Object.assign(globalThis, { seen });
    });
    // Held up until then, so that it cannot have answered before it ends.
    const ends = await page
      .workers()[0]
      ?.evaluate<number>(
        `setTimeout(() => { while (Date.now() < globalThis.ends); ${end}; }, 300), (globalThis.ends = Date.now() + 3000)`,
      );
    await goTo(page, 'studies/turning');
    await page.locator('.study-wait').first().waitFor();
    const seen = await page.evaluate(() => (globalThis as unknown as { seen: Promise<number> }).seen);
    expect(seen - (ends ?? 0)).toBeLessThan(1000);
    await expect.poll(() => page.locator('.study-wait').count()).toBe(0);
    expect(await plate(page).count()).toBe(0);
    expect(await page.locator('[data-view="turning"]').textContent()).toMatch(/rudder gap/i);
  });
});
