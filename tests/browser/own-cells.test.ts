import { describe, expect, it } from 'vitest';
import { writePlan } from '../../src/plan/file/write-plan.ts';
import { newPlan } from '../../src/plan/new-plan.ts';
import type { OwnCell } from '../../src/plan/plan.ts';
import { cellValue, DESK, goTo, openPages } from './page.ts';

const open = openPages();

describe('own cells', () => {
  it('adds a formula with a name put in from the list, and judges it by a limit of its own', async () => {
    const { page } = await open(DESK, '#/own-cells');
    const root = page.locator('[data-view="own-cells"]');
    const form = root.locator('form').first();
    await form.getByLabel('Label', { exact: true }).fill('Reach');
    await form.getByLabel('Unit', { exact: true }).fill('mm');
    const formula = form.getByLabel(/^Formula/);
    await formula.fill('=standoff + ');
    await root.getByRole('searchbox').fill('lower reach');
    await root.getByRole('button', { name: 'Put in lower_reach' }).click();
    await expect.poll(() => formula.inputValue()).toBe('=standoff + lower_reach');
    await formula.press('Enter');
    // Standoff with three shims, 36/cos 10° + 160, and the reach of 160 once more.
    await page.waitForSelector('[data-view="own-cells"] [data-name="reach"]:not([data-value=""])');
    await expect
      .poll(() => cellValue(page, 'own-cells', 'reach'))
      .toBeCloseTo(36 / Math.cos(Math.PI / 18) + 320, 9);

    await root.getByLabel('Result that it judges').selectOption('reach');
    await root
      .getByRole('form', { name: 'A new limit of your own' })
      .getByLabel(/^At least/)
      .fill('400');
    await root.getByRole('button', { name: 'Set the limit' }).click();
    await expect
      .poll(() => root.locator('[data-limit="reach_own"]').getAttribute('data-state'))
      .toBe('outside');
  });

  it('refuses a formula with its sentence and keeps it as typed, from page to page', async () => {
    const { page } = await open(DESK, '#/own-cells');
    const root = page.locator('[data-view="own-cells"]');
    const form = root.locator('form').first();
    await form.getByLabel('Label', { exact: true }).fill('Double');
    await form.getByLabel(/^Formula/).fill('=2 * shim_stack');
    await form.getByRole('button', { name: 'Add the cell' }).click();
    const formula = root.locator('[data-input="double"]');
    await formula.fill('=2 * shim_stak');
    await formula.press('Enter');
    await goTo(page, 'mount');
    await page.waitForSelector('[data-view="form"]');
    await goTo(page, 'own-cells');
    await formula.waitFor();
    await expect.poll(() => formula.inputValue()).toBe('=2 * shim_stak');
    await expect.poll(() => root.getByRole('alert').textContent()).toBe('There is no cell named shim_stak.');
    await expect.poll(() => cellValue(page, 'own-cells', 'double')).toBe(72);
  });

  it('names every cell of a loop', async () => {
    const { page } = await open(DESK, '#/own-cells');
    const root = page.locator('[data-view="own-cells"]');
    const form = root.locator('form').first();
    for (const [label, text] of [
      ['First', '1'],
      ['Second', '=first'],
    ] as const) {
      await form.getByLabel('Label', { exact: true }).fill(label);
      await form.getByLabel(/^Formula/).fill(text);
      await form.getByRole('button', { name: 'Add the cell' }).click();
    }
    await root.locator('[data-input="first"]').fill('=second');
    await root.locator('[data-input="first"]').press('Enter');
    await page.waitForFunction(() =>
      document.querySelector('[data-cell="first"]')?.textContent?.includes('No answer'),
    );
    const words = (await root.locator('[data-cell="first"]').textContent()) ?? '';
    expect(words).toContain('first uses second');
    expect(words).toContain('second uses first');
  });

  it('shows fifteen hundred in stretches, each worked out from the one before', async () => {
    const { page } = await open(DESK, '#/plan');
    const ownCells = Array.from({ length: 1500 }, (_, i): OwnCell => {
      const formula = i === 0 ? '=shim_stack' : `=link_${i - 1} + 1`;
      return { name: `link_${i}`, label: `Link ${i}`, unit: 'mm', value: null, formula };
    });
    const text = writePlan({ ...newPlan('Chain'), ownCells });
    const plan = page.locator('[data-view="plan"]');
    await plan
      .locator('input[type="file"]')
      .setInputFiles({ name: 'chain.plan.json', mimeType: 'application/json', buffer: Buffer.from(text) });
    await plan.getByRole('button', { name: /^Keep it/ }).click();
    await goTo(page, 'own-cells');
    const root = page.locator('[data-view="own-cells"]');
    await root.getByText('Cells 1 to 40 of 1500.').waitFor();
    expect(await root.locator('[data-cell]').count()).toBe(40);
    await root.getByRole('button', { name: 'Later' }).click();
    await root.getByText('Cells 41 to 80 of 1500.').waitFor();
    await expect.poll(() => cellValue(page, 'own-cells', 'link_79')).toBe(4 * 12 + 79);
  });
});
