import { expect, it } from 'vitest';
import { faults, tooWide } from './axe.ts';
import { goTo, type openPages, type Size } from './page.ts';

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

/** Tests that every place of the page has no fault that axe-core finds, and fits its window. */
export function everyPlace(open: ReturnType<typeof openPages>, size: Size): void {
  it('has no fault that axe-core finds, and fits its window', async () => {
    const { page } = await open(size);
    // What stands around every place is looked at once.
    expect(await faults(page)).toEqual([]);
    for (const place of PLACES) {
      await goTo(page, place);
      await page.waitForTimeout(300);
      expect(await faults(page, 'main'), place).toEqual([]);
      await expect.poll(() => tooWide(page), { message: place }).toBeLessThanOrEqual(0);
    }
  }, 240_000);
}
