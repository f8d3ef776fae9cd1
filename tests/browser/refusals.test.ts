import { describe, expect, it } from 'vitest';
import { cellValue, DESK, goTo, openPages } from './page.ts';

const open = openPages();

/** Rows of the refusal table: the page, the input, what is typed, and what the sentence says. */
const ROWS: readonly (readonly [what: string, place: string, name: string, typed: string, says: RegExp])[] = [
  ['letters in a number', 'boat', 'transom_rake', '1o', /1o/],
  ['a fraction over nothing', 'mount', 'shim_thickness', '2 3/0', /cannot be 0/],
  ['a number too large', 'mount', 'shim_thickness', '1e400', /1e400/],
  ['a negative thickness', 'boat', 'transom_thickness', '-3', /more than 0/],
  ['half a shim', 'mount', 'shim_count', '3.5', /whole number/],
  ['a rake of 80°', 'boat', 'transom_rake', '80', /at most 60/],
  ['a foreign unit', 'mount', 'shim_thickness', '7 kn', /kn/],
  ['thousands set apart', 'gear', 'shaft_length', '1,500', /1500/],
  ['a wall of half the diameter', 'gear', 'tube_wall', '30.15', /tube_od.*tube_wall/],
  ['a stock wider than the bore', 'gear', 'stock_diameter', '53', /stock_diameter.*tube_od/],
  ['a head below its foot', 'boat', 'main_rudder_head', '-1300', /main_rudder_foot.*main_rudder_head/],
  ['a top below its bottom', 'boat', 'transom_top', '20', /transom_bottom.*transom_top/],
  ['more balance than chord', 'gear', 'vane_rudder_balance', '231', /vane_rudder_balance.*vane_rudder_chord/],
  ['a low bound above the high one', 'gear', 'spread_min', '95', /spread_min.*spread_max/],
  [
    'a camber radius short of a foot',
    'boat',
    'transom_camber_radius',
    '150',
    /transom_camber_radius.*port_foot_y/,
  ],
  [
    'an unknown name in a formula',
    'boat',
    'rudder_overhang',
    '=rudder_shape + 2',
    /no cell named rudder_shape/,
  ],
];

describe('what cannot be is refused at its field', () => {
  it('keeps the text as typed, says what is allowed, and leaves the last good value in use', async () => {
    const { page } = await open(DESK);
    let at = '';
    for (const [what, place, name, typed, says] of ROWS) {
      if (at !== place) await goTo(page, place);
      at = place;
      const field = page.locator(`[data-view="form"] [data-input="${name}"]`);
      const before = await cellValue(page, 'form', name);
      await field.fill(typed);
      await field.press('Enter');
      await page.locator('h1').click();
      await expect.poll(() => field.inputValue(), { message: what }).toBe(typed);
      await expect.poll(() => field.getAttribute('aria-invalid'), { message: what }).toBe('true');
      const cell = page.locator(`[data-view="form"] [data-cell="${name}"]`);
      await expect.poll(() => cell.getByRole('alert').textContent(), { message: what }).toMatch(says);
      await expect
        .poll(() => cell.getByRole('alert').textContent(), { message: what })
        .toMatch(/still in use/);
      await expect.poll(() => cellValue(page, 'form', name), { message: what }).toBe(before);
      await field.focus();
      await page.keyboard.press('Escape');
      await expect.poll(() => cell.getByRole('alert').count(), { message: what }).toBe(0);
    }
  });
});
