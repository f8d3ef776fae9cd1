import { describe, expect, it } from 'vitest';
import { DESK, goTo, onePage, openPages } from './page.ts';

const open = openPages();

describe('the drawing', () => {
  const demo = onePage('#/mount');

  it('shows where to measure until something is read, and then the mount', async () => {
    const { page } = await open(DESK, '#/plan');
    await page.getByRole('button', { name: 'New plan, all values stand-ins' }).click();
    await goTo(page, 'mount');
    const lead = page.locator('[data-view="lead"]');
    await expect.poll(() => lead.textContent()).toContain('Nothing is read yet');
    const drawing = page.locator('[data-view="drawing"]');
    await expect.poll(() => drawing.locator('circle[data-part="transom_rake"]').count()).toBe(1);
    await expect.poll(() => page.locator('[data-view="board"][data-new]').count()).toBe(1);

    await lead.getByRole('link', { name: 'slope of the transom from upright', exact: true }).click();
    const field = page.locator('[data-view="form"] [data-input="transom_rake"]');
    await field.fill('-12');
    await field.press('Enter');
    await drawing.getByRole('button', { name: 'From astern' }).waitFor();
    await expect.poll(() => lead.textContent()).not.toContain('Nothing is read yet');
    await expect.poll(() => page.locator('[data-view="board"][data-new]').count()).toBe(0);
  });

  it('draws another scenario behind, and letters what differs', async () => {
    const page = demo();
    const drawing = page.locator('[data-view="drawing"]');
    await expect.poll(() => drawing.getByText('behind 900 mm').count()).toBe(0);
    await drawing.getByLabel('Drawn behind').selectOption({ label: 'Upper bracket raised behind' });
    await drawing.getByText('behind 900 mm').waitFor();
    await expect.poll(() => drawing.locator('path[stroke-dasharray="6 3"]').count()).toBeGreaterThan(0);
    await drawing.getByLabel('Drawn behind').selectOption({ label: 'Nothing behind' });
    await drawing.getByText('behind 900 mm').waitFor({ state: 'detached' });
  });

  it('leaves a part that cannot be computed dotted where it stood, with the reason', async () => {
    const page = demo();
    await goTo(page, 'boat');
    const drawing = page.locator('[data-view="drawing"]');
    await drawing.locator('svg text', { hasText: 'Upper bracket' }).first().waitFor();
    const field = page.locator('[data-view="form"] [data-input="transom_rake"]');
    await field.fill('');
    await field.press('Enter');
    await drawing.locator('path[stroke-dasharray="1.5 3.5"]').first().waitFor();
    await expect.poll(() => drawing.textContent()).toContain('is empty');
  });

  it('shows no other boat beside the steps of one’s own', async () => {
    const page = demo();
    await goTo(page, 'own-boat');
    await page.locator('[data-view="own-boat"]').waitFor();
    await expect.poll(() => page.locator('[data-view="strip"]').count()).toBe(0);
    await expect
      .poll(() => page.locator('[data-view="drawing"] circle[data-part="transom_top"]').count())
      .toBe(1);
  });
});
