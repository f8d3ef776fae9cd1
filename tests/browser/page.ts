import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, inject } from 'vitest';

export interface Size {
  readonly width: number;
  readonly height: number;
}

export const DESK: Size = { width: 1440, height: 900 };
export const TABLET: Size = { width: 1024, height: 768 };
export const PHONE: Size = { width: 390, height: 844 };

interface Opened {
  readonly page: Page;
  readonly context: BrowserContext;
}

let browser: Browser;

/** Connects to the one browser for as long as the tests of a file or a group run. */
function connected(): void {
  beforeAll(async () => {
    browser = await chromium.connect(inject('browser'));
  });
  afterAll(() => browser.close());
}

async function openIn(size: Size, hash: string, hasTouch = false): Promise<Opened> {
  const context = await browser.newContext({
    viewport: size,
    locale: 'en-GB',
    acceptDownloads: true,
    hasTouch,
    isMobile: hasTouch,
  });
  const page = await context.newPage();
  page.setDefaultTimeout(15_000);
  await page.goto(inject('page') + hash);
  await answered(page);
  return { page, context };
}

/** Gives the tests of a file a way to open the page in a profile of its own, which is closed when the test ends. */
export function openPages(): (size?: Size, hash?: string) => Promise<Opened> {
  const opened: BrowserContext[] = [];
  connected();
  // A page left open works on behind the tests that follow.
  afterEach(async () => {
    for (const context of opened.splice(0)) await context.close();
  });
  return async (size = DESK, hash = '') => {
    const it = await openIn(size, hash);
    opened.push(it.context);
    return it;
  };
}

/** Opens the page once for a group of tests that walk through it one after the other. */
export function onePage(hash = '', size = DESK, hasTouch = false): () => Page {
  let opened: Opened;
  beforeAll(async () => {
    opened = await openIn(size, hash, hasTouch);
  });
  afterAll(() => opened.context.close());
  return () => opened.page;
}

/** Waits until the engine has answered. */
export const answered = (page: Page): Promise<unknown> =>
  page.waitForFunction(() => document.querySelector('#page[aria-busy]') === null);

/** Goes to a place of the page as its names line does. */
export const goTo = (page: Page, place: string): Promise<void> =>
  page.evaluate((it) => {
    window.location.hash = `#/${it}`;
  }, place);

/** State of a limit as the board says it. */
export const stateOf = (page: Page, limit: string): Promise<string | null> =>
  page.locator(`[data-view="board"] [data-limit="${limit}"]`).first().getAttribute('data-state');

/** Base-unit value of a cell as a view shows it. */
export const cellValue = async (page: Page, view: string, name: string): Promise<number> =>
  Number(
    await page.locator(`[data-view="${view}"] [data-name="${name}"]`).first().getAttribute('data-value'),
  );
