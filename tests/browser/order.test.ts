import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import DxfParser from 'dxf-parser';
import { describe, expect, it } from 'vitest';
import { goTo, onePage, openPages, PHONE } from './page.ts';

const open = openPages();

describe('the order list', () => {
  const desk = onePage('#/parts');

  it('lists what the scenario needs, and follows a choice', async () => {
    const page = desk();
    const order = page.locator('[data-view="order"]');
    const shims = order.getByRole('row', { name: /^Shims/ });
    const bolts = order.getByRole('row', { name: /^Lower bracket 2 M12/ }).first();
    await expect.poll(() => shims.textContent()).toContain('3');
    // Case to start from with three shims: a grip of 75, so M12 × 100 (ISO 888).
    await expect.poll(() => bolts.textContent()).toMatch(/M12\s×\s100/);
    await page.getByLabel('Scenario', { exact: true }).selectOption('Four shims');
    await expect.poll(() => shims.textContent()).toContain('4');
    await expect.poll(() => bolts.textContent()).toMatch(/M12\s×\s110/);
  });

  it('saves templates that another program reads', async () => {
    const page = desk();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save as DXF' }).click(),
    ]);
    expect(download.suggestedFilename()).toBe('reverse-transom-template.dxf');
    const folder = mkdtempSync(join(tmpdir(), 'sternmount-saved-'));
    const file = join(folder, 'templates.dxf');
    await download.saveAs(file);
    const drawing = new DxfParser().parseSync(readFileSync(file, 'utf8'));
    rmSync(folder, { recursive: true });
    expect(drawing?.header.$INSUNITS).toBe(4);
    expect(drawing?.entities.filter((it) => it.type === 'POLYLINE')).toHaveLength(4);
  });

  it('is short lists on a phone, with every figure named', async () => {
    const { page } = await open(PHONE);
    await goTo(page, 'parts');
    const row = page.locator('[data-view="order"] .order-rows li').first();
    await expect.poll(() => row.textContent()).toContain('Thread past the nut');
    await expect.poll(() => page.locator('[data-view="order"] .order-rows li').count()).toBeGreaterThan(10);
  });
});
