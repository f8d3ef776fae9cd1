import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { pages, resultNamed } from '../../src/plan/book.ts';
import { openPlan } from '../../src/plan/file/open-plan.ts';
import type { InputCell } from '../../src/plan/template.ts';
import { isCellRow, isHead, rowsOf } from '../../src/views/grid/rows.ts';
import { optionsOf } from '../../src/views/parts/options.ts';
import { command } from '../support/command.ts';
import { answered, goTo, onePage, openPages } from './page.ts';

openPages();

const FILE = 'demo-data/start.plan.json';
const SCENARIO = 'Three shims';

const opened = openPlan(readFileSync(FILE, 'utf8'));
if (!opened.ok) throw new Error(opened.why);

interface Edit {
  readonly cell: InputCell;
  readonly place: 'boat' | 'gear' | 'mount';
  /** Typed first, and at once typed over by `typed`. */
  readonly first: string;
  readonly typed: string;
}

/** The same length as people write it, in turn. */
const WAYS: readonly ((mm: number) => string)[] = [
  (mm) => String(mm),
  (mm) => `${mm} mm`,
  (mm) => String(mm).replace('.', ','),
  (mm) => `${mm / 10} cm`,
  (mm) => `${Math.sign(mm) * Math.round(Math.abs(mm) / 3.175)}/8 in`,
];

/** Forty inputs with a value a little beside their own, none of which stands against another. */
function edits(): readonly Edit[] {
  const all: Edit[] = [];
  for (const { page, sections } of pages) {
    if (page !== 'Boat' && page !== 'Gear' && page !== 'Mount') continue;
    for (const cell of sections.flatMap((it) => it.cells)) {
      if (cell.kind === 'result' || cell.type !== 'number' || optionsOf(cell) !== undefined) continue;
      const value = opened.ok ? opened.plan.inputs.get(cell.name)?.value : undefined;
      if (typeof value !== 'number' || Math.abs(value) < 4) continue;
      const to = Number((value * 1.01).toFixed(1));
      const way = WAYS[all.length % WAYS.length];
      const typed = cell.unit === 'mm' && way !== undefined ? way(to) : String(to);
      all.push({ cell, place: page.toLowerCase() as Edit['place'], first: String(value), typed });
    }
  }
  return all.slice(0, 40);
}

const EDITS = edits();

/** Every result and limit as the command line gives them with the same texts. */
async function told() {
  const sets = EDITS.flatMap(({ cell, typed }) => ['--set', `${cell.name}=${typed}`]);
  const { code, out, err } = await command('evaluate', [
    ...['--plan', FILE, '--scenario', SCENARIO, '--json'],
    ...sets,
  ]);
  expect(err).toBe('');
  expect(code).toBe(0);
  return JSON.parse(out) as {
    results: Readonly<Record<string, number | null>>;
    limits: readonly { readonly name: string; readonly state: string }[];
  };
}

const shownOn = async (page: Page, view: string): Promise<ReadonlyMap<string, string>> =>
  new Map(
    await page
      .locator(`[data-view="${view}"] [data-name]`)
      .evaluateAll((all) =>
        all.map((it) => [it.getAttribute('data-name') ?? '', it.getAttribute('data-value') ?? ''] as const),
      ),
  );

async function expectTold(page: Page): Promise<void> {
  const { results, limits } = await told();
  for (const place of ['checks', 'loads', 'parts']) {
    await goTo(page, place);
    await page.waitForSelector('[data-view="results"] [data-name]');
    const shown = await shownOn(page, 'results');
    expect(shown.size).toBeGreaterThan(10);
    for (const [name, value] of shown) {
      if (resultNamed(name)?.flag === true) continue;
      const given = results[name] ?? null;
      // The last digit of a sine or a root is the browser's own.
      if (given === null) expect(value, name).toBe('');
      else expect(Math.abs(Number(value) - given), name).toBeLessThanOrEqual(1e-11 * Math.abs(given));
    }
  }
  await goTo(page, 'mount');
  const states = new Map(
    await page
      .locator('[data-view="board"] [data-limit]')
      .evaluateAll((all) =>
        all.map((it) => [it.getAttribute('data-limit') ?? '', it.getAttribute('data-state') ?? ''] as const),
      ),
  );
  for (const { name, state } of limits) if (states.has(name)) expect(states.get(name), name).toBe(state);
  expect(states.size).toBeGreaterThan(20);
}

describe('forty edits as fast as keys can come', () => {
  it('are forty', () => expect(EDITS).toHaveLength(40));

  describe('into the form', () => {
    const page = onePage('#/boat');
    it('give what the command line gives', async () => {
      let at: string | undefined;
      for (const { cell, place, first, typed } of EDITS) {
        if (at !== place) {
          await goTo(page(), place);
          await page().waitForSelector(`[data-view="form"] [data-input="${cell.name}"]`);
        }
        at = place;
        await page().locator(`[data-view="form"] [data-input="${cell.name}"]`).focus();
        // Straight after the focus, and straight after Enter.
        await page().keyboard.type(first);
        await page().keyboard.press('Enter');
        await page().keyboard.type(typed);
        await page().keyboard.press('Enter');
      }
      await expectTold(page());
    });

    it('take the place of the old text after a click too', async () => {
      await goTo(page(), 'boat');
      const field = page().locator('[data-view="form"] [data-input="transom_top"]');
      for (const text of ['901', '902', '903 mm']) {
        await page().locator('h1').click();
        await field.click();
        await page().keyboard.type(text);
        await expect.poll(() => field.inputValue()).toBe(text);
        await page().keyboard.press('Enter');
      }
    });
  });

  describe('into the workbook', () => {
    const page = onePage('#/workbook');
    it('give what the command line gives', async () => {
      await answered(page());
      await page().waitForSelector('[data-view="grid"] [data-input]');
      const rows = rowsOf(undefined, []).filter((row) => !isHead(row));
      const at = (name: string): number => rows.findIndex((row) => isCellRow(row) && row.name === name);
      const [start] = EDITS;
      if (start === undefined) throw new Error('there is no edit');
      await goTo(page(), `workbook/${start.cell.name}`);
      await page().waitForFunction(
        (name) => document.activeElement?.getAttribute('data-name') === name,
        start.cell.name,
      );
      let now = at(start.cell.name);
      for (const { cell, first, typed } of EDITS) {
        for (const to = at(cell.name); now < to; now++) await page().keyboard.press('ArrowDown');
        await page().keyboard.type(first);
        await page().keyboard.press('Enter');
        await page().keyboard.press('ArrowUp');
        await page().keyboard.type(typed);
        await page().keyboard.press('Enter');
        now++;
      }
      await expectTold(page());
    });
  });
});
