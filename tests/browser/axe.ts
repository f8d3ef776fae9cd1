import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Page } from 'playwright-core';

const AXE = readFileSync(resolve(import.meta.dirname, '../../node_modules/axe-core/axe.min.js'), 'utf8');

export interface Fault {
  readonly id: string;
  readonly nodes: readonly string[];
}

/** Faults that axe-core finds on the page as it stands, or in a part of it, WCAG 2.2 A and AA. */
export async function faults(page: Page, part = 'html'): Promise<readonly Fault[]> {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(AXE);
  // What the phone's bar covers for the moment can be scrolled out from under it; axe cannot know that.
  await page.evaluate(() =>
    document.querySelector<HTMLElement>('.page-bar')?.style.setProperty('position', 'static'),
  );
  return page.evaluate(async (where) => {
    const { axe } = window as unknown as {
      axe: {
        run: (
          part: string,
          options: object,
        ) => Promise<{ violations: { id: string; nodes: { html: string }[] }[] }>;
      };
    };
    const found = await axe.run(where, {
      runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
      resultTypes: ['violations'],
      selectors: false,
    });
    return found.violations.map(({ id, nodes }) => ({
      id,
      nodes: nodes.slice(0, 3).map((it) => it.html.slice(0, 160)),
    }));
  }, part);
}

/** How far the page is wider than its window, px. */
export const tooWide = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
