import { resolve } from 'node:path';
import { buffer, text } from 'node:stream/consumers';
import DxfParser from 'dxf-parser';
import type { Download, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { openPlan } from '../../src/plan/file/open-plan.ts';
import { readPdf, textOf } from '../support/read-pdf.ts';
import { answered, cellValue, DESK, goTo, openPages, stateOf } from './page.ts';

const open = openPages();

const DEMO = resolve(import.meta.dirname, '../../demo-data/measured-afloat.plan.json');

const put = async (page: Page, place: string, typed: string): Promise<void> => {
  const field = page.locator(place).first();
  await field.fill(typed);
  await field.press('Enter');
};

const fit = '[data-view="fit-up"]';
const tick = (page: Page, step: string): Promise<void> =>
  page.locator(`${fit} [data-step="${step}"] input`).click();
const part = (page: Page, word: string): Promise<void> =>
  page.locator(`${fit} nav`).getByRole('link', { name: word }).click();
const said = (page: Page, step: string): Promise<string | null> =>
  page.locator(`${fit} [data-reading="${step}"] [role="status"]`).textContent();

const saved = async (page: Page, button: string): Promise<Download> => {
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: button }).click();
  return coming;
};

async function openDemo(page: Page): Promise<void> {
  await goTo(page, 'plan');
  const root = page.locator('[data-view="plan"]');
  await root.locator('input[type="file"]').setInputFiles(DEMO);
  await root.getByRole('button', { name: 'Keep it in place of this plan' }).click();
  await answered(page);
}

/** The row that does not go with the rest is read again, and the boat follows it. */
async function measure(page: Page): Promise<void> {
  await goTo(page, 'survey');
  const table = page.locator('[data-table="transom_readings"]');
  await table.locator('[data-row="7"][data-suspicious]').waitFor();
  await put(page, '[data-input="transom_readings.7.distance"]', '708');
  await expect.poll(() => table.locator('[data-suspicious]').count()).toBe(0);
  await goTo(page, 'boat');
  // It was drawn with a rake of −7°.
  await expect.poll(() => cellValue(page, 'form', 'transom_rake')).toBeGreaterThan(-7.2);
  await expect.poll(() => cellValue(page, 'form', 'transom_rake')).toBeLessThan(-6.8);
}

async function mend(page: Page): Promise<void> {
  await goTo(page, 'mount');
  await expect.poll(() => stateOf(page, 'rudder_gap')).toBe('outside');
  await expect.poll(() => stateOf(page, 'starboard_foot_clear')).toBe('outside');
  await page.locator('[data-view="form"] [data-cell="shim_count"] button.stepper').nth(1).click();
  for (const [name, typed] of [
    ['port_foot_y', '-175'],
    ['starboard_foot_y', '175'],
  ] as const) {
    await put(page, `[data-view="form"] [data-input="${name}"]`, typed);
  }
  await expect.poll(() => page.locator('[data-view="board"] [data-state="outside"]').count()).toBe(0);
}

async function order(page: Page): Promise<void> {
  await goTo(page, 'parts');
  const shims = page.locator('[data-view="order"]').getByRole('row', { name: /^Shims/ });
  await expect.poll(() => shims.textContent()).toContain('3');
  const drawing = new DxfParser().parseSync(
    await text(await (await saved(page, 'Save as DXF')).createReadStream()),
  );
  // Shim, one foot's pad and the two hole layouts at the least.
  expect(drawing?.entities.filter((it) => it.type === 'POLYLINE').length).toBeGreaterThanOrEqual(4);
}

/** Meets the stop point at the head of a step, and gives a reason for whatever else stops it. */
async function pass(page: Page, step: string, point?: string): Promise<void> {
  await tick(page, step);
  const plate = page.locator(`[data-row="${step}"] .fit-up-plate`);
  if (point !== undefined) await plate.locator(`[data-step="${point}"] input`).click();
  if ((await plate.locator('[data-stop]').count()) > 0) {
    await plate.getByRole('button', { name: 'Go on all the same' }).click();
    await plate.getByLabel('Go on all the same, because').fill('measured on the gear this morning');
    await plate.getByRole('button', { name: 'Go on with this reason' }).click();
  }
  await expect.poll(() => plate.count()).toBe(0);
  await tick(page, step);
}

async function work(page: Page): Promise<void> {
  await goTo(page, 'fit-up');
  await put(page, `${fit} input[type="text"], ${fit} input:not([type])`, 'the owner');
  await tick(page, 'inside');
  await tick(page, 'cloth');
  await put(page, '[data-reading="pilot"] input', '26 mm');
  await expect.poll(() => said(page, 'pilot')).toContain('Not met');
  await expect
    .poll(() => page.locator(`${fit} .fit-up-open`).textContent())
    .toContain('call the yard or a surveyor before any other hole');
  await put(page, '[data-reading="pilot"] input', '20.5 mm');
  await expect.poll(() => said(page, 'pilot')).toMatch(/^Met/);
  await pass(page, 'pilot', 'stop_inside');
  await pass(page, 'first_hole', 'stop_core');
  for (const step of ['shaft_line', 'trial_shaft']) await tick(page, step);
  await pass(page, 'second_hole', 'stop_second_hole');
  await tick(page, 'plumb');
  await put(page, '[data-reading="trial_struts"] input', '44 mm');
  await expect.poll(() => said(page, 'trial_struts')).toContain('Not met');
  await put(page, '[data-reading="trial_struts"] input', '58 mm');
  await expect.poll(() => said(page, 'trial_struts')).toMatch(/^Met/);
  for (const step of ['trial_struts', 'mark_feet']) await tick(page, step);
  await pass(page, 'one_foot_hole', 'stop_feet');
  const just = page.locator(fit).getByRole('button', { name: /just as planned/ });
  for (let left = await just.count(); left > 0; left = await just.count()) await just.first().click();
  const locks = page.locator(fit).getByRole('button', { name: /Lock as drilled/ });
  for (let left = await locks.count(); left > 0; left = await locks.count()) await locks.first().click();
  await goTo(page, 'mount');
  for (const name of ['lower_bracket_height', 'port_foot_y', 'starboard_foot_height']) {
    const drilled = page.locator(`[data-view="form"] [data-input="${name}"]`).first();
    await drilled.waitFor({ state: 'attached' });
    await expect.poll(() => drilled.getAttribute('readonly')).not.toBeNull();
  }
}

async function fitted(page: Page): Promise<void> {
  await goTo(page, 'fit-up');
  await part(page, 'As fitted');
  await page.waitForSelector('[data-cut="port"]');
  const cut = async (side: string): Promise<number> =>
    Number(await page.locator(`[data-cut="${side}"]`).getAttribute('data-value'));
  await expect.poll(() => cut('port')).toBeGreaterThan(0);
  const planned = await cut('port');
  expect(await cut('starboard')).toBeCloseTo(planned, 6);
  await put(page, '[data-fitted="port_foot_y"] input', '-181 mm');
  await expect.poll(() => cut('port')).toBeGreaterThan(planned + 1);
  await expect.poll(() => cut('starboard')).toBeCloseTo(planned, 6);
  await put(page, '[data-fitted="upper_bracket_height"] input', '905 mm');
  await page.getByRole('button', { name: 'Yes, I read 905 mm' }).click();
  await page.waitForSelector('[data-fitted-limit="drive_headroom"][data-state="outside"]');
  await put(page, '[data-fitted="upper_bracket_height"] input', '792 mm');
  await expect
    .poll(() => page.locator('[data-fitted-limit="drive_headroom"]').getAttribute('data-state'))
    .toBe('inside');
  await expect.poll(() => page.locator('[data-cut="port"]').textContent()).toMatch(/±.*planned.*Cut \d+/);
}

async function handOver(page: Page): Promise<void> {
  await goTo(page, 'fit-up');
  await part(page, 'Handover record');
  await put(page, '[data-input="handover_where"]', 'at the berth, afloat');
  await put(page, '[data-input="handover_handed_to"]', 'the mate');
  await expect
    .poll(() => page.locator('.fit-up-record').textContent())
    .toMatch(/Height of the upper bracket: 792 mm.*planned 790 mm/);
  await goTo(page, 'paper');
  await page.getByLabel('Handover record').check();
  await page.waitForFunction(() => document.querySelector('.paper-sheets[data-stale]') === null);
  await expect
    .poll(() => page.locator('[data-view="paper"] figure').first().textContent())
    .toContain('the mate');
  expect(await page.getByRole('button', { name: 'Save as SVG' }).count()).toBe(0);
  const file = await saved(page, 'Save as PDF');
  const pages = await readPdf(new Uint8Array(await buffer(await file.createReadStream())));
  const words = pages.map(textOf).join(' ');
  for (const it of [
    'Measured afloat',
    'at the berth, afloat',
    'the mate',
    'Pilot the first hole',
    '792 mm',
  ]) {
    expect(words).toContain(it);
  }
  await page.getByLabel('Templates').check();
  const shop = await saved(page, 'Save as SVG');
  expect(shop.suggestedFilename()).toBe('measured-afloat-template.svg');
  // At true size: the picture's own millimetres are its width on paper.
  expect(await text(await shop.createReadStream())).toMatch(
    /<svg[^>]* width="([\d.]+)mm"[^>]* viewBox="\S+ \S+ \1 /,
  );
}

/** What the file holds that a last save writes. */
async function kept(page: Page): Promise<void> {
  await goTo(page, 'plan');
  const file = await saved(page, 'Save as a file');
  const opened = openPlan(await text(await file.createReadStream()));
  if (!opened.ok) throw new Error(opened.why);
  const { plan } = opened;
  expect(plan.tables.find((it) => it.name === 'transom_readings')?.rows[6]).toEqual([820, 708]);
  expect([...plan.locked]).toContain('starboard_foot_y');
  expect(plan.fit.fitted.get('port_foot_y')?.value).toBe(-181);
  expect(plan.fit.handover.get('handed_to')).toBe('the mate');
}

describe('the whole job', () => {
  it('goes from the survey of one boat to its handover record', async () => {
    const { page } = await open(DESK);
    await openDemo(page);
    await measure(page);
    await mend(page);
    await order(page);
    await work(page);
    await fitted(page);
    await handOver(page);
    await kept(page);
  }, 120_000);
});
