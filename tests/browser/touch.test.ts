import type { CDPSession } from 'playwright-core';
import { beforeAll, describe, expect, it } from 'vitest';
import { goTo, onePage, openPages, PHONE } from './page.ts';

openPages();

type Point = readonly [x: number, y: number];

describe('a finger on a phone', () => {
  const page = onePage('#/mount', PHONE, true);
  let devtools: CDPSession;
  beforeAll(async () => {
    devtools = await page().context().newCDPSession(page());
  });

  const touch = async (type: 'touchStart' | 'touchMove' | 'touchEnd', at?: Point): Promise<void> => {
    const touchPoints = at === undefined ? [] : [{ x: at[0], y: at[1] }];
    await devtools.send('Input.dispatchTouchEvent', { type, touchPoints });
  };
  /** One finger from a point by so much, as a hand moves. */
  const swipe = async ([x, y]: Point, [dx, dy]: Point): Promise<void> => {
    await touch('touchStart', [x, y]);
    for (let i = 1; i <= 12; i++) await touch('touchMove', [x + (dx * i) / 12, y + (dy * i) / 12]);
    await touch('touchEnd');
  };
  /** A slider in the middle of the screen: its thumb, and a place on its rule as far from that as can be. */
  const slider = async (name: string): Promise<{ thumb: Point; rule: Point }> => {
    const rule = page().locator(`[data-cell="${name}"] input[type="range"]`);
    await rule.evaluate((it) => it.scrollIntoView({ block: 'center' }));
    return rule.evaluate((it: HTMLInputElement) => {
      const { left, top, width, height } = it.getBoundingClientRect();
      const share = (Number(it.value) - Number(it.min)) / (Number(it.max) - Number(it.min));
      const y = top + height / 2;
      return {
        thumb: [left + 10 + share * (width - 20), y] as const,
        rule: [share > 0.5 ? left + 24 : left + width - 24, y] as const,
      };
    });
  };
  const values = (): Promise<readonly (readonly [string, string])[]> =>
    page()
      .locator('[data-view="form"] [data-name]')
      .evaluateAll((all) =>
        all.map((it) => [it.getAttribute('data-name') ?? '', it.getAttribute('data-value') ?? ''] as const),
      );
  const scrolled = (): Promise<number> =>
    page().evaluate(
      () =>
        window.scrollY +
        [...document.querySelectorAll('.page-body, .page-middle')].reduce((sum, it) => sum + it.scrollTop, 0),
    );

  /** Waits until a scroll that is still running out has come to rest, so that it takes no part in the next. */
  const atRest = async (): Promise<number> => {
    let before = Number.NaN;
    await expect
      .poll(async () => {
        const [last, now] = [before, await scrolled()];
        before = now;
        return now === last;
      })
      .toBe(true);
    return before;
  };

  it('scrolls the page from any slider and changes nothing', async () => {
    const names = await page()
      .locator('[data-view="form"] [data-cell]:has(input[type="range"])')
      .evaluateAll((all) => all.map((it) => it.getAttribute('data-cell') ?? ''));
    expect(names.length).toBeGreaterThan(4);
    const before = await values();
    for (const name of names.slice(0, 4)) {
      for (const from of ['rule', 'thumb'] as const) {
        // Straight, and as a thumb swings: a little to the side.
        for (const by of [
          [0, -220],
          [40, -220],
        ] as const) {
          // A swipe made for the test may get lost where the page is busy; one made by hand is made again too.
          let went = false;
          for (let tries = 0; tries < 3 && !went; tries++) {
            await atRest();
            const at = (await slider(name))[from];
            const top = await atRest();
            await swipe(at, by);
            went = await expect
              .poll(scrolled, { timeout: 4000 })
              .toBeGreaterThan(top + 50)
              .then(
                () => true,
                () => false,
              );
            expect(await values(), `${name}, ${from}, ${by}`).toEqual(before);
          }
          expect(went, `${name}, ${from}, ${by}`).toBe(true);
        }
      }
    }
    // A tap beside the thumb and a swipe along the rule are no drags either.
    for (const by of [
      [0, 0],
      [-60, 0],
    ] as const) {
      await swipe((await slider('upper_bracket_height')).rule, by);
      await page().waitForTimeout(100);
      expect(await values()).toEqual(before);
    }
    // Nothing of it is a step of undo.
    await goTo(page(), 'board');
    await expect.poll(() => page().getByRole('button', { name: /^Undo/ }).first().isEnabled()).toBe(false);
    await goTo(page(), 'mount');
  }, 120_000);

  it('drags a value by the thumb, as one step of undo', async () => {
    const value = async (): Promise<number> =>
      Number(
        await page()
          .locator('[data-view="form"] [data-name="upper_bracket_height"]')
          .getAttribute('data-value'),
      );
    const before = await value();
    await swipe((await slider('upper_bracket_height')).thumb, [70, 2]);
    await expect.poll(value).toBeGreaterThan(before + 50);
    await goTo(page(), 'board');
    await page().getByRole('button', { name: /^Undo/ }).first().click();
    await goTo(page(), 'mount');
    await expect.poll(value).toBe(before);
  });
});
