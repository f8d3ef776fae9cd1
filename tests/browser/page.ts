import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, inject } from 'vitest';

export interface Size {
  readonly width: number;
  readonly height: number;
}

export const DESK: Size = { width: 1440, height: 900 };
export const TABLET: Size = { width: 1024, height: 768 };
export const PHONE: Size = { width: 390, height: 844 };

let browser: Browser;

/** Connects to the one browser for the tests of a file. Gives a way to open the page in a profile of its own. */
export function openPages(): (
  size?: Size,
  hash?: string,
) => Promise<{ page: Page; context: BrowserContext }> {
  const opened: BrowserContext[] = [];
  beforeAll(async () => {
    browser = await chromium.connect(inject('browser'));
  });
  afterAll(async () => {
    for (const context of opened) await context.close();
    await browser.close();
  });
  return async (size = DESK, hash = '') => {
    const context = await browser.newContext({ viewport: size, locale: 'en-GB', acceptDownloads: true });
    opened.push(context);
    const page = await context.newPage();
    page.setDefaultTimeout(15_000);
    await page.goto(inject('page') + hash);
    await answered(page);
    return { page, context };
  };
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
