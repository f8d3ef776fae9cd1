import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { writePlan } from '../../src/plan/file/write-plan.ts';
import { newPlan } from '../../src/plan/new-plan.ts';
import { DESK, openPages } from './page.ts';

const open = openPages();

const DEMO = readFileSync(resolve(import.meta.dirname, '../../demo-data/start.plan.json'), 'utf8');

const choose = (page: Page, name: string, text: string): Promise<void> =>
  page
    .locator('[data-view="plan"] input[type="file"]')
    .setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });

const reason = (page: Page): Promise<string | null> =>
  page.locator('[data-view="plan"] [data-reason]').getAttribute('data-reason');

describe('opening a file', () => {
  it('shows what a visitor would change before it is kept, and undo brings the plan back', async () => {
    const { page } = await open(DESK, '#/plan');
    const root = page.locator('[data-view="plan"]');
    const title = page.getByRole('heading', { level: 1 });
    const before = await title.textContent();
    await choose(page, 'theirs.plan.json', writePlan(newPlan('<b>Theirs</b>')));
    await root.getByText('Visitor:').waitFor();
    await expect.poll(() => title.textContent()).toBe(before);
    await expect
      .poll(() => root.getByRole('table', { name: /^Scenarios/ }).textContent())
      .toContain('Three shims');
    await root.getByRole('button', { name: 'Keep it in place of this plan' }).click();
    await expect.poll(() => title.textContent()).toBe('<b>Theirs</b>');
    await page.locator('[data-view="title"]').getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => title.textContent()).toBe(before);
  });

  it('tells the reasons apart and never loses the text', async () => {
    const { page } = await open(DESK, '#/plan');
    const root = page.locator('[data-view="plan"]');
    const kept = root.getByLabel('Its text, to the letter');
    await choose(page, 'a.json', '{"shopping": ["bolts"]}');
    await root.getByText('This is not a plan', { exact: true }).waitFor();
    await expect.poll(() => reason(page)).toBe('not a plan');
    await expect.poll(() => kept.inputValue()).toBe('{"shopping": ["bolts"]}');

    await choose(page, 'b.plan.json', DEMO.replace(/"version": \d+/, '"version": 99'));
    await root.getByText('This plan comes from a newer workbook').waitFor();
    await expect.poll(() => reason(page)).toBe('too new');

    await choose(page, 'c.plan.json', ' '.repeat(2_000_001));
    await root.getByText('This is larger than a plan can be').waitFor();
    await expect.poll(() => kept.count()).toBe(0);

    const cut = DEMO.slice(0, -3);
    await choose(page, 'd.plan.json', cut);
    await root.getByText('This plan is damaged').waitFor();
    await expect.poll(() => kept.inputValue()).toBe(cut);
    await kept.fill(DEMO);
    await root.getByRole('button', { name: 'Try the mended text' }).click();
    await root.getByText('Visitor:').waitFor();
  });

  it('takes a file that is dropped', async () => {
    const { page } = await open(DESK, '#/plan');
    const data = await page.evaluateHandle(
      (text) => {
        const transfer = new DataTransfer();
        transfer.items.add(new File([text], 'dropped.plan.json', { type: 'application/json' }));
        return transfer;
      },
      writePlan(newPlan('Dropped')),
    );
    await page
      .locator('[data-view="plan"]')
      .getByText('A plan file: choose one')
      .dispatchEvent('drop', { dataTransfer: data });
    await page.getByText('Visitor: “Dropped”').waitFor();
  });
});
