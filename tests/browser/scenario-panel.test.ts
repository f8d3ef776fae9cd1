import { describe, expect, it } from 'vitest';
import { cellValue, onePage, openPages, PHONE } from './page.ts';

const open = openPages();

describe('the scenario panel', () => {
  const desk = onePage('#/scenarios');

  it('sets scenarios side by side: differences first, then limits with state and room', async () => {
    const page = desk();
    const table = page.locator('[data-view="scenarios"] table');
    await table.locator('[data-limit="rudder_gap"][data-state="outside"]').waitFor();
    await expect
      .poll(() => table.getByRole('columnheader').allTextContents())
      .toEqual([
        'Choice or limit',
        'Base values',
        'Three shims shown now',
        'Four shims',
        'Upper bracket raised',
      ]);
    const cells = (name: string): Promise<string[]> =>
      table.getByRole('row', { name }).first().getByRole('cell').allTextContents();
    await expect.poll(() => cells('Shims under the lower bracket')).toEqual(['4', '3base: 4', '4', '4']);
    await page.waitForFunction(
      () => !document.querySelector('[data-view="scenarios"] td')?.textContent?.includes('worked out'),
    );
    const gaps = await cells('Rudder gap');
    expect(gaps[1]).toContain('outside');
    expect(gaps[1]).toContain('5.3 mm short');
    expect(gaps[2]).toContain('near');
    await expect.poll(() => cellValue(page, 'scenarios', 'shim_count')).toBe(3);
  });

  it('has undo where a scenario was deleted', async () => {
    const page = desk();
    const list = page
      .locator('[data-view="scenarios"]')
      .getByRole('list', { name: 'Base values and scenarios' });
    await list.getByRole('button', { name: 'Delete “Four shims”' }).click();
    const rows = list.getByRole('listitem');
    await expect.poll(() => rows.nth(2).textContent()).toContain('“Four shims” is deleted.');
    await rows.nth(2).getByRole('button', { name: /^Undo/ }).click();
    await expect.poll(() => rows.nth(2).textContent()).toContain('Four shims');
    await expect.poll(() => list.getByText('is deleted').count()).toBe(0);
  });

  it('keeps a name that is refused as typed', async () => {
    const page = desk();
    const root = page.locator('[data-view="scenarios"]');
    await root.getByRole('button', { name: 'Rename “Three shims”' }).click();
    const field = root.getByLabel('New name for “Three shims”');
    await field.fill('Four shims');
    await field.press('Enter');
    await expect
      .poll(() => root.getByRole('alert').textContent())
      .toContain('There is a scenario named “Four shims” already');
    await expect.poll(() => field.inputValue()).toBe('Four shims');
  });

  it('shows one column at 390 px, picked from a list', async () => {
    const { page } = await open(PHONE, '#/scenarios');
    const table = page.locator('[data-view="scenarios"] table');
    await table.waitFor();
    const shown = async (): Promise<string[]> =>
      table.getByRole('row', { name: 'Shims under the lower bracket' }).getByRole('cell').allTextContents();
    await expect.poll(() => shown()).toEqual(['3base: 4']);
    await page.getByLabel('Column shown').selectOption('Four shims');
    await expect.poll(() => shown()).toEqual(['4']);
  });
});
