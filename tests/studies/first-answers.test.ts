import { describe, expect, it } from 'vitest';
import { type Drivers, drivers } from '../../src/studies/drivers.ts';
import { type Odds, odds } from '../../src/studies/odds.ts';
import type { Study } from '../../src/studies/study.ts';
import { plainPoints } from './plain-points.ts';
import { cantileverStress, endLoad } from './published.ts';

/** What a study tells on its way, and in the end; how many points each took. */
function told<T>(study: Study<T>, count: () => number) {
  const early: { readonly soFar: T; readonly count: number }[] = [];
  let step = study.next();
  while (step.done !== true) {
    if (step.value.soFar !== undefined) early.push({ soFar: step.value.soFar as T, count: count() });
    step = study.next();
  }
  return { early, answer: step.value, count: count() };
}

const width = ({ low, high }: { low: number; high: number }): number => high - low;

describe('a first answer', () => {
  it('of the odds comes from few draws, with a wider interval about the same chance', () => {
    const evaluators = plainPoints([endLoad.limit]);
    const ask = { scenario: null, errors: endLoad.errors, share: 0, seed: 1, certainty: 0.99 };
    const { early, answer, count } = told<Odds>(
      odds(evaluators, { ...ask, repeats: 16, points: 1024 }),
      evaluators.count,
    );
    expect(early).toHaveLength(1);
    expect(early[0]?.soFar.first).toBe(true);
    expect(answer.first).toBeUndefined();
    expect(early[0]?.count).toBeLessThan(count / 8);
    const [rough, close] = [early[0]?.soFar.together.sampled.fails, answer.together.sampled.fails];
    // The end load of OpenTURNS’ t_FORM_std; its chance by quadrature, where design points alone say 0.156426.
    const truth = 0.1454608;
    for (const it of [rough, close]) {
      expect(it?.low).toBeLessThan(truth);
      expect(it?.high).toBeGreaterThan(truth);
    }
    expect(width(rough ?? close)).toBeGreaterThan(2 * width(close));
    // The corner that the slopes point to is the worst of a room without a turn.
    expect(early[0]?.soFar.limits[0]?.worst.room).toBeCloseTo(answer.limits[0]?.worst.room ?? 0, 9);
  });

  it('of drivers has the slopes at once, then shares from few draws', () => {
    const evaluators = plainPoints([cantileverStress.limit]);
    const inputs = cantileverStress.errors.map((it) => ({ ...it, whole: false }));
    const { early, answer } = told<Drivers>(
      drivers(evaluators, { scenario: null, inputs, limits: ['room'], share: 0, seed: 1 }),
      evaluators.count,
    );
    const [slopes, rough] = early.map((it) => it.soFar);
    expect(early.map((it) => it.soFar.first)).toEqual([true, true]);
    expect(answer.first).toBeUndefined();
    expect(slopes?.limits[0]?.drivers).toEqual(answer.limits[0]?.drivers);
    expect(slopes?.limits[0]?.shares).toBeUndefined();
    const shareOf = (of: Drivers | undefined) =>
      of?.limits[0]?.shares?.find((it) => it.factor.name === 'X')?.total;
    const [few, all] = [shareOf(rough), shareOf(answer)];
    if (few === undefined || all === undefined) throw new Error('no shares');
    expect(width(few)).toBeGreaterThan(width(all));
    // X has .39 of the variance (Dakota manual, first order).
    expect(few.low).toBeLessThan(0.4);
    expect(few.high).toBeGreaterThan(0.38);
  });
});
