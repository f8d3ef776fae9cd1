import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium, type Page } from 'playwright-core';
import { build } from 'vite';
import { serve } from '../../src/cli/serve.ts';
import { CHROMIUM_FLAGS, findChromium } from '../support/chromium.ts';
import { type Times, timesOf } from './numbers.ts';
import { longestTasks } from './studies-page.ts';
import { workerTimes } from './worker.ts';

const PRESSES = 60;

const ready = (page: Page): Promise<unknown> =>
  page.waitForFunction(
    () => document.querySelector('#page[aria-busy]') === null && document.querySelector('.scene') !== null,
  );

/** Presses a stepper in the form, and times each press until field, board and drawing stand as they will be painted. */
async function stepper(page: Page): Promise<Times> {
  const times = await page.evaluate(async (presses) => {
    const field = document.querySelector<HTMLElement>('[data-view="form"] [data-name="shim_count"]');
    const row = field?.closest('[data-cell]') ?? field?.parentElement?.parentElement;
    const [less, more] = [...(row?.querySelectorAll<HTMLButtonElement>('button.stepper') ?? [])];
    if (less === undefined || more === undefined) throw new Error('The stepper of the shims was not found.');
    const found: number[] = [];
    for (let i = 0; i < presses; i++) {
      await new Promise((done) => requestAnimationFrame(() => setTimeout(done, 20)));
      const start = performance.now();
      (i % 2 === 0 ? more : less).click();
      // Reading the layout makes the browser finish it, so that what is left is the paint alone.
      document.body.getBoundingClientRect();
      found.push(performance.now() - start);
    }
    return found;
  }, PRESSES);
  return timesOf(times.slice(10));
}

/** Longest until the chart that belongs to the newest edit is drawn, ms. */
async function chart(page: Page): Promise<Times | string> {
  const panel = page.locator('[data-view="sweep"]').first();
  if ((await panel.count()) === 0) return 'no chart on this page';
  const times = await page.evaluate(async (presses) => {
    const sweep = document.querySelector('[data-view="sweep"]');
    const field = document.querySelector<HTMLElement>(
      '[data-view="form"] [data-name="upper_bracket_height"]',
    );
    const row = field?.closest('[data-cell]') ?? field?.parentElement?.parentElement;
    const [less, more] = [...(row?.querySelectorAll<HTMLButtonElement>('button.stepper') ?? [])];
    if (sweep === null || less === undefined || more === undefined)
      throw new Error('The chart was not found.');
    const found: number[] = [];
    for (let i = 0; i < presses; i++) {
      await new Promise((done) => setTimeout(done, 300));
      const start = performance.now();
      (i % 2 === 0 ? more : less).click();
      let last = start;
      const watch = new MutationObserver(() => {
        last = performance.now();
      });
      watch.observe(sweep, { subtree: true, childList: true, attributes: true, characterData: true });
      await new Promise((done) => setTimeout(done, 400));
      watch.disconnect();
      found.push(last - start);
    }
    return found;
  }, 20);
  return timesOf(times);
}

/** A page that times its next key. */
interface Timed {
  took: Promise<number>;
}

/** Types a value and presses Enter in the grid, and times each until the next frame has begun after the change. */
async function gridEnter(page: Page, address: string): Promise<Times | string> {
  await page.goto(`${address}#/workbook`);
  const cell = page.locator('[data-view="grid"] [data-input="transom_thickness"]').first();
  try {
    await cell.waitFor({ timeout: 15_000 });
  } catch {
    return 'no grid on this page';
  }
  const times: number[] = [];
  await cell.scrollIntoViewIfNeeded();
  for (let i = 0; i < 24; i++) {
    await cell.click();
    await page.keyboard.type(String(16 + (i % 3)));
    // Listening before the key is pressed: the two go to the page by different ways.
    await page.evaluate(() => {
      (window as unknown as Timed).took = new Promise<number>((done) => {
        window.addEventListener(
          'keydown',
          () => {
            const start = performance.now();
            requestAnimationFrame(() => requestAnimationFrame(() => done(performance.now() - start)));
          },
          { once: true, capture: true },
        );
      });
    });
    await page.keyboard.press('Enter');
    times.push(await page.evaluate(() => (window as unknown as Timed).took));
    await page.waitForTimeout(30);
  }
  return timesOf(times.slice(4));
}

interface Paints {
  /** The first contentful paint. */
  readonly first_paint_ms: number;
  /** The form's first field is there to be painted. */
  readonly form_paint_ms: number;
}

/** Cold loads at 9 Mbit and 60 ms with a processor four times slower, ms; medians. */
async function firstPaint(browser: Browser, address: string): Promise<Paints> {
  const first: number[] = [];
  const form: number[] = [];
  for (let i = 0; i < 5; i++) {
    const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
    const page = await context.newPage();
    const session = await context.newCDPSession(page);
    await session.send('Network.enable');
    await session.send('Network.emulateNetworkConditions', {
      offline: false,
      latency: 60,
      downloadThroughput: (9e6 / 8) | 0,
      uploadThroughput: (9e6 / 8) | 0,
    });
    await session.send('Emulation.setCPUThrottlingRate', { rate: 4 });
    await page.addInitScript(() => {
      const watch = new MutationObserver(() => {
        if (document.querySelector('[data-input]') === null) return;
        watch.disconnect();
        requestAnimationFrame(() => performance.mark('form'));
      });
      watch.observe(document, { subtree: true, childList: true });
    });
    await page.goto(address, { waitUntil: 'load' });
    await ready(page);
    const marks = await page.evaluate(() =>
      ['first-contentful-paint', 'form'].map(
        (name) => performance.getEntriesByName(name)[0]?.startTime ?? Number.NaN,
      ),
    );
    first.push(marks[0] ?? Number.NaN);
    form.push(marks[1] ?? Number.NaN);
    await context.close();
  }
  return { first_paint_ms: timesOf(first).median, form_paint_ms: timesOf(form).median };
}

export async function pageTimes(): Promise<Record<string, unknown>> {
  const outDir = mkdtempSync(join(tmpdir(), 'sternmount-bench-'));
  await build({ logLevel: 'error', build: { outDir, emptyOutDir: true } });
  const server = await serve(outDir);
  const { address } = server;
  const browser = await chromium.launch({ executablePath: findChromium(), args: [...CHROMIUM_FLAGS] });
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  try {
    await page.goto(address);
    await ready(page);
    return {
      stepper_ms: await stepper(page),
      chart_ms: await chart(page),
      longest_task_ms: await longestTasks(page),
      ...(await workerTimes(browser, address)),
      grid_enter_ms: await gridEnter(page, address),
      ...(await firstPaint(browser, address)),
    };
  } finally {
    await browser.close();
    await server.close();
    rmSync(outDir, { recursive: true, force: true });
  }
}
