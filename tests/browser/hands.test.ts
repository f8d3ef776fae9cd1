import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { faults } from './axe.ts';
import { cellValue, goTo, onePage, openPages, PHONE } from './page.ts';

openPages();

/** What has the focus: its hook or words; '' while it has fallen to the page. */
const focused = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const it = document.activeElement;
    if (it === null || it === document.body) return '';
    return it.getAttribute('data-input') ?? it.getAttribute('aria-label') ?? it.textContent ?? it.tagName;
  });

const undoWords = (page: Page): Promise<string | null> =>
  page.locator('[data-view="title"] button[aria-label^="Undo"]').getAttribute('aria-label');

const plate = (page: Page) => page.locator('dialog[data-view="unit-question"]');

describe('which unit a length was meant in', () => {
  const page = onePage('#/mount');
  const height = () => cellValue(page(), 'form', 'upper_bracket_height');
  const field = () => page().locator('[data-view="form"] [data-input="upper_bracket_height"]');

  it('is asked in the form before anything is put in, once, and answered by keys', async () => {
    await goTo(page(), 'mount');
    await field().focus();
    await page().keyboard.type('24 1/2');
    await page().keyboard.press('Enter');
    await plate(page()).waitFor();
    await expect.poll(() => plate(page()).textContent()).toContain('24 1/2 has no unit');
    expect(await height()).toBe(800);
    expect(await faults(page(), 'dialog')).toEqual([]);
    // The unit that would be usual comes first.
    await expect.poll(() => focused(page())).toContain('24 1/2 in');
    await page().keyboard.press('Enter');
    await expect.poll(height).toBeCloseTo(622.3, 9);
    await expect.poll(() => focused(page())).toBe('upper_bracket_height');
    await expect.poll(() => field().inputValue()).toBe('24 1/2 in');
    // Left without an answer the text stays, also where the focus comes straight back.
    await page().keyboard.type('25 1/2');
    await page().keyboard.press('Enter');
    await plate(page()).waitFor();
    await page().keyboard.press('Escape');
    await expect.poll(() => plate(page()).count()).toBe(0);
    await expect.poll(() => field().inputValue()).toBe('25 1/2');
    await page().keyboard.type('24 1/2');
    await page().keyboard.press('Tab');
    await plate(page()).waitFor();
    await page().keyboard.press('Escape');
    await expect.poll(() => plate(page()).count()).toBe(0);
    expect(await height()).toBeCloseTo(622.3, 9);
    await expect.poll(() => field().getAttribute('aria-invalid')).toBe('true');
    await expect.poll(() => field().inputValue()).toBe('24 1/2');
    expect(await focused(page())).not.toBe('');
    await page().locator('[data-view="title"] button[aria-label^="Undo"]').click();
    await expect.poll(height).toBe(800);
  });

  it('is asked in the workbook, and once for a block that is pasted', async () => {
    await goTo(page(), 'workbook/upper_bracket_height');
    const cell = page().locator('[data-view="grid"] [data-name="upper_bracket_height"]');
    await cell.click();
    await page().keyboard.type('30 1/2');
    await page().keyboard.press('Enter');
    await plate(page()).waitFor();
    await page().keyboard.press('Enter');
    await expect.poll(() => cell.getAttribute('data-value')).toBe('774.7');
    // The table goes on by keys where it was.
    await page().keyboard.press('ArrowUp');
    await page().keyboard.type('800');
    await page().keyboard.press('Enter');
    await expect.poll(() => cell.getAttribute('data-value')).toBe('800');

    await cell.click();
    await page().evaluate(() => {
      const data = new DataTransfer();
      data.setData('text/plain', '31 1/2\n2\n-6 3/4');
      document.activeElement?.dispatchEvent(
        new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true }),
      );
    });
    await plate(page()).waitFor();
    await expect.poll(() => plate(page()).textContent()).toContain('all 2 lengths');
    await page().keyboard.press('Enter');
    await expect.poll(() => cell.getAttribute('data-value')).toBe('800.1');
    await expect
      .poll(() => page().locator('[data-view="grid"] [data-name="port_foot_y"]').getAttribute('data-value'))
      .toBe('-171.45');
    await expect.poll(() => undoWords(page())).toBe('Undo: 3 values');
    await page().keyboard.press('Control+z');
    await page().keyboard.press('Control+z');
    await page().keyboard.press('Control+z');
    await expect.poll(() => cell.getAttribute('data-value')).toBe('800');
  });

  it('is asked in the survey, for one figure and for pasted rows', async () => {
    await goTo(page(), 'survey');
    const table = page().locator('[data-table="transom_readings"]');
    await table.getByRole('button', { name: /^First row/ }).click();
    await expect.poll(() => focused(page())).toBe('transom_readings.1.height');
    await page().keyboard.type('0');
    await page().keyboard.press('Tab');
    await page().keyboard.type('20 1/2');
    await page().keyboard.press('Enter');
    await plate(page()).waitFor();
    await page().keyboard.press('Enter');
    const first = page().locator('[data-input="transom_readings.1.distance"]');
    await expect.poll(() => first.inputValue()).toBe('520.7');
    await table.getByRole('button', { name: /^Paste rows/ }).click();
    await table.locator('textarea').fill('6; 19 7/8\n12; 19 1/4');
    await table.getByRole('button', { name: 'Put these rows in' }).click();
    await plate(page()).waitFor();
    await plate(page()).getByRole('button', { name: 'inches' }).click();
    await expect.poll(() => table.locator('[data-row]').count()).toBeGreaterThan(2);
    await expect.poll(() => table.locator('[data-input$=".height"]').last().inputValue()).toBe('304.8');
    expect(await focused(page())).not.toBe('');
  });
});

describe('rows of the survey', () => {
  const page = onePage('#/survey');
  it('go on by Enter as one reads them: down a column, across a row, and into new ones', async () => {
    const table = page().locator('[data-table="transom_readings"]');
    await table.getByRole('button', { name: /^First row/ }).click();
    // Across: Tab to the second figure, Enter to the next row. No wait between the keys.
    for (const [height, distance] of [
      ['0', '700'],
      ['150', '645'],
      ['300', '590'],
      ['450', '535'],
    ] as const) {
      await page().keyboard.type(height);
      await page().keyboard.press('Tab');
      await page().keyboard.type(distance);
      await page().keyboard.press('Enter');
    }
    await expect.poll(() => focused(page())).toBe('transom_readings.5.height');
    const figures = () =>
      table.locator('[data-input]').evaluateAll((all) => all.map((it) => (it as HTMLInputElement).value));
    await expect.poll(figures).toEqual(['0', '700', '150', '645', '300', '590', '450', '535', '', '']);
    // Down: the same column of the next row; a row that lacks a figure is finished first.
    await page().locator('[data-input="transom_readings.1.distance"]').click();
    for (const distance of ['701', '646', '591', '536']) {
      await page().keyboard.type(distance);
      await page().keyboard.press('Enter');
    }
    await expect.poll(() => focused(page())).toBe('transom_readings.5.distance');
    await page().keyboard.type('480');
    await page().keyboard.press('Enter');
    await expect.poll(() => focused(page())).toBe('transom_readings.5.height');
    await page().keyboard.type('600');
    await page().keyboard.press('Enter');
    await expect.poll(() => focused(page())).toBe('transom_readings.6.height');
    await expect
      .poll(figures)
      .toEqual([...['0', '701', '150', '646', '300', '591', '450', '536', '600', '480'], ...['', '']]);
    // A figure and the row made after it are one step.
    await page().locator('[data-view="title"] button[aria-label^="Undo"]').click();
    await expect.poll(() => figures().then((all) => all.length)).toBe(10);
    await page().locator('[data-input="transom_readings.5.height"]').focus();
    // What cannot be keeps the focus.
    await page().keyboard.type('low');
    await page().keyboard.press('Enter');
    await expect.poll(() => focused(page())).toBe('transom_readings.5.height');
  });
});

describe('a selection in the workbook', () => {
  const page = onePage('#/workbook/port_foot_height');
  const value = (name: string) =>
    page().locator(`[data-view="grid"] [data-name="${name}"]`).getAttribute('data-value');
  it('is filled by Ctrl+Enter and Ctrl+D as one step, and never emptied', async () => {
    await page().locator('[data-view="grid"] [data-name="port_foot_height"]').waitFor();
    const rows = await page()
      .locator('[data-view="grid"] td[data-input]')
      .evaluateAll((all) => all.map((it) => it.getAttribute('data-name') ?? ''));
    const at = rows.indexOf('port_foot_height');
    const [first = '', second = '', third = ''] = rows.slice(at, at + 3);
    expect(third).not.toBe('');
    const before = [await value(first), await value(second), await value(third)];
    await page().locator(`[data-view="grid"] [data-name="${first}"]`).click();
    for (let i = 0; i < 2; i++) await page().keyboard.press('Shift+ArrowDown');
    for (const keys of ['Control+d', 'Control+Enter']) {
      await page().keyboard.press(keys);
      await expect.poll(() => value(second)).toBe(before[0]);
      await expect.poll(() => value(third)).toBe(before[0]);
      await page().keyboard.press('Control+z');
      await expect
        .poll(async () => [await value(first), await value(second), await value(third)])
        .toEqual(before);
    }
    // Typed and entered with Ctrl, a text goes into all of them.
    await page().keyboard.type('555');
    await page().keyboard.press('Control+Enter');
    await expect
      .poll(async () => [await value(first), await value(second), await value(third)])
      .toEqual(['555', '555', '555']);
    await page().keyboard.press('Control+z');
    await expect.poll(() => value(third)).toBe(before[2] ?? '');
    // From a result nothing is filled in, and it is said.
    await goTo(page(), 'workbook/rudder_gap');
    await page().locator('[data-view="grid"] [data-name="rudder_gap"]').click();
    await page().keyboard.press('Shift+ArrowDown');
    await page().keyboard.press('Control+Enter');
    await expect.poll(() => page().locator('.grid-told').textContent()).toContain('Nothing was filled in');
  });

  it('opens a list where there is one, by keys and by two clicks', async () => {
    await goTo(page(), 'workbook/bolt_diameter');
    const cell = page().locator('[data-view="grid"] [data-name="bolt_diameter"]');
    await cell.click();
    const list = page().locator('select.grid-list');
    await page().keyboard.press('Enter');
    await list.waitFor();
    await expect.poll(() => list.locator('option').allTextContents()).toEqual(['M6', 'M8', 'M10', 'M12']);
    expect(await faults(page(), '[data-view="grid"]')).toEqual([]);
    await page().keyboard.press('ArrowUp');
    await page().keyboard.press('Enter');
    await expect.poll(() => cell.getAttribute('data-value')).toBe('10');
    await expect.poll(() => list.count()).toBe(0);
    // The keys are the table's again; what is typed is taken too.
    await page().keyboard.press('ArrowUp');
    await page().keyboard.type('8');
    await page().keyboard.press('Enter');
    await expect.poll(() => cell.getAttribute('data-value')).toBe('8');
    await cell.dblclick();
    await list.waitFor();
    await page().keyboard.press('Escape');
    await expect.poll(() => list.count()).toBe(0);
    await expect.poll(() => cell.getAttribute('data-value')).toBe('8');
  });
});

describe('the focus after a press', () => {
  const page = onePage('#/survey');
  it('goes on where what was pressed has gone, and what follows is said', async () => {
    const table = page().locator('[data-table="transom_readings"]');
    await table.getByRole('button', { name: /^Paste rows/ }).click();
    await table
      .locator('textarea')
      .fill([0, 150, 300, 450, 600, 750].map((z) => `${z};${700 - z / 4}`).join('\n'));
    await table.getByRole('button', { name: 'Put these rows in' }).click();
    await expect.poll(() => focused(page())).not.toBe('');
    const follow = page()
      .getByRole('button', { name: /let Boat follow it.*Slope of the transom/ })
      .first();
    await follow.focus();
    await page().keyboard.press('Enter');
    await expect.poll(() => focused(page())).not.toBe('');
    const said = () => page().locator('p[role="status"][aria-live="polite"]').last().textContent();
    await expect.poll(said).toContain('now follows the survey');
    const row = page().locator('[data-input="transom_readings.6.distance"]');
    await row.fill('900');
    await row.press('Enter');
    await expect.poll(said).toContain('does not fit the others');

    await goTo(page(), 'mount');
    const shims = page().locator('[data-view="form"] [data-input="shim_count"]');
    await shims.fill('3.5');
    await shims.press('Enter');
    const drop = page().getByRole('button', { name: 'Drop what was typed' });
    await drop.focus();
    await page().keyboard.press('Enter');
    await expect.poll(() => drop.count()).toBe(0);
    await expect.poll(() => focused(page())).not.toBe('');
    // The last undo leaves its button with nothing to do.
    const undo = page().locator('[data-view="title"] button[aria-label^="Undo"]');
    for (let i = 0; i < 20 && (await undo.isEnabled()); i++) {
      await undo.focus();
      await page().keyboard.press('Enter');
    }
    await expect.poll(() => undo.isEnabled()).toBe(false);
    await expect.poll(() => focused(page())).not.toBe('');
    // Choosing what a chart shows is no step.
    await goTo(page(), 'studies/drivers');
    await page().waitForTimeout(200);
    expect(await undo.isEnabled()).toBe(false);
  });
});

describe('the question about a unit on a phone', () => {
  const page = onePage('#/own-boat', PHONE, true);
  it('fits the screen and goes on to the next reading', async () => {
    const root = page().locator('[data-view="own-boat"]');
    for (const word of ['mm', 'ashore', 'upright', 'yes'])
      await root.locator(`[data-answer="${word}"]`).tap();
    await root.getByRole('button', { name: 'Next' }).tap();
    await root.locator('[data-input="transom_top"]').fill('36 1/4');
    await root.getByRole('button', { name: 'Next' }).tap();
    await plate(page()).waitFor();
    const box = await plate(page()).boundingBox();
    expect(box?.width).toBeLessThanOrEqual(PHONE.width - 30);
    await plate(page())
      .getByRole('button', { name: /36 1\/4 in/ })
      .tap();
    await root.locator('[data-input="transom_bottom"]').waitFor();
    await root.getByRole('button', { name: 'Back' }).tap();
    await expect.poll(() => root.locator('[data-input="transom_top"]').inputValue()).toBe('36 1/4 in');
  });
});
