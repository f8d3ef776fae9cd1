import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { DESK, goTo, openPages, PHONE } from './page.ts';

const open = openPages();

const AXE = readFileSync(resolve(import.meta.dirname, '../../node_modules/axe-core/axe.min.js'), 'utf8');

interface Fault {
  readonly id: string;
  readonly nodes: readonly string[];
}

/** Faults that axe-core finds on the page as it stands, or in a part of it, WCAG 2.2 A and AA. */
async function faults(page: Page, part = 'html'): Promise<readonly Fault[]> {
  await page.evaluate(AXE);
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
    });
    return found.violations.map(({ id, nodes }) => ({
      id,
      nodes: nodes.slice(0, 3).map((it) => it.html.slice(0, 160)),
    }));
  }, part);
}

const PLACES = [
  'survey',
  'boat',
  'gear',
  'mount',
  'checks',
  'loads',
  'parts',
  'fit-up/work',
  'fit-up/before',
  'fit-up/stops',
  'fit-up/fitted',
  'fit-up/handover',
  'own-cells',
  'scenarios',
  'studies/sweep',
  'studies/map',
  'studies/drivers',
  'studies/turning',
  'studies/odds',
  'studies/proposals',
  'plan',
  'paper',
  'own-boat',
  'reference',
  'not-judged',
  'board',
];

/** How far the page is wider than its window, px. */
const tooWide = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);

describe('every place of the page', () => {
  it.each([
    ['1440 px', DESK],
    ['390 px', PHONE],
  ])(
    'has no fault that axe-core finds, and fits its window, at %s',
    async (_, size) => {
      const { page } = await open(size);
      // What stands around every place is looked at once.
      expect(await faults(page)).toEqual([]);
      for (const place of PLACES) {
        await goTo(page, place);
        await page.waitForTimeout(300);
        expect(await faults(page, 'main'), place).toEqual([]);
        expect(await tooWide(page), place).toBeLessThanOrEqual(0);
      }
    },
    240_000,
  );

  it('has none in the workbook grid, with and without an open editor', async () => {
    const { page } = await open(DESK, '#/workbook/transom_rake');
    await page.waitForSelector('[data-view="grid"] [data-input="transom_rake"]');
    expect(await faults(page)).toEqual([]);
    await page.locator('[data-view="grid"] [data-input="transom_rake"]').dblclick();
    expect(await faults(page)).toEqual([]);
  });

  it('has none while a field is refused, and with a limit opened', async () => {
    const { page } = await open(DESK);
    const field = page.locator('[data-view="form"] [data-input="shim_count"]');
    await field.fill('3.5');
    await field.press('Enter');
    await page.locator('[data-view="board"] [data-limit="rudder_gap"] button').first().click();
    await page.waitForTimeout(500);
    expect(await faults(page)).toEqual([]);
  });

  it('keeps to its window with text twice as large, at 1440, 390 and 320 px', async () => {
    for (const size of [DESK, PHONE, { width: 320, height: 640 }]) {
      const { page } = await open(size);
      if (size.width !== 320) {
        await page.evaluate(() => {
          document.documentElement.style.fontSize = '200%';
        });
      }
      for (const place of ['mount', 'checks', 'board']) {
        await goTo(page, place);
        await page.waitForTimeout(200);
        expect(await tooWide(page), `${place} at ${size.width}`).toBeLessThanOrEqual(0);
      }
      // The worst limit keeps its whole name.
      const name = page.locator('[data-view="strip"] .strip-name').first();
      if ((await name.count()) === 0) continue;
      expect(await name.evaluate((it) => it.scrollWidth - it.clientWidth)).toBeLessThanOrEqual(0);
    }
  }, 120_000);
});
