import { describe, expect, it } from 'vitest';
import type { Choice } from '../../src/studies/candidates.ts';
import { type RemedyAsk, remedies } from '../../src/studies/remedies.ts';
import { finish } from '../../src/studies/study.ts';
import { type PlainLimit, plainEvaluator } from './plain-evaluator.ts';

const sheets: Choice = { name: 'sheets', present: 3, low: 0, high: 10, step: 1, counts: true };
const height: Choice = { name: 'height', present: 250, low: 100, high: 400, step: 5, counts: false };
const accepted: Choice = { name: 'least', present: 50, low: 10, high: 100, step: 5, counts: false };

/** Sheets widen the gap by 12 mm each, height narrows it; both load the bolts. */
const gap: PlainLimit = {
  name: 'gap',
  of: (input) => 8 + 12 * input('sheets') - 0.1 * (input('height') - 250),
  low: 50,
  near: 10,
};
const bolts: PlainLimit = { name: 'bolts', of: (input) => 0.5 + 0.08 * input('sheets'), high: 1, near: 0.05 };
const hole: PlainLimit = { name: 'hole', of: (input) => input('height') - 40, low: 60, near: 10 };
const still: PlainLimit = { name: 'still', of: () => 5, low: 0 };

const run = (limits: readonly PlainLimit[], ask: Partial<RemedyAsk>, inputs = { sheets: 3, height: 250 }) =>
  finish(remedies(plainEvaluator(inputs, limits), { limit: 'gap', choices: [], accepted: [], ...ask }));

describe('remedies', () => {
  it('gives for each choice the nearest value that is not outside, and the nearest that is inside', () => {
    const found = run([gap, bolts, hole, still], { choices: [height, sheets] });
    expect(found.limit).toMatchObject({ state: 'outside', value: 44 });
    const by = new Map(found.remedies.map((it) => [it.choice, it]));
    expect(by.get('sheets')).toMatchObject({
      present: 3,
      first: { value: 4, limit: { state: 'near', value: 56 } },
      inside: { value: 5, limit: { state: 'inside', value: 68 } },
    });
    expect(by.get('height')).toMatchObject({
      first: { value: 190, limit: { state: 'near', value: 50 } },
      inside: undefined,
    });
  });

  it('tells what each makes worse, with figures, and only that', () => {
    const found = run([gap, bolts, hole, still], { choices: [sheets] });
    const [remedy] = found.remedies;
    expect(remedy?.first.worse).toMatchObject([
      { how: 'less room', before: { name: 'bolts', value: 0.74 }, after: { name: 'bolts' } },
    ]);
    expect(remedy?.first.worse[0]?.after.value).toBeCloseTo(0.82, 12);
    expect(remedy?.first.worse[0]?.lost).toBeCloseTo(0.08, 12);
    expect(remedy?.inside?.worse).toMatchObject([{ how: 'less room', after: { name: 'bolts' } }]);
  });

  it('counts the other limits that are mended', () => {
    const twin: PlainLimit = { ...gap, name: 'twin' };
    expect(run([gap, twin, bolts], { choices: [sheets] }).remedies[0]?.first.mends).toEqual(['twin']);
  });

  it('brings a limit that is near inside, and leaves one that is not called outside alone', () => {
    const found = run([gap, bolts], { choices: [sheets] }, { sheets: 4, height: 250 });
    expect(found.limit.state).toBe('near');
    expect(found.remedies).toMatchObject([
      { first: { value: 5, limit: { state: 'inside' } }, inside: undefined },
    ]);
  });

  it('puts first what makes the fewest limits fail, then what counts things, then what does least harm', () => {
    const order = (limits: readonly PlainLimit[]) =>
      run(limits, { choices: [height, sheets] }).remedies.map((it) => it.choice);
    // Height takes more room than the sheets do, and turns nothing.
    expect(order([gap, bolts, hole])).toEqual(['sheets', 'height']);
    // The fourth sheet brings the bolts near, and is still what one would try first.
    expect(order([gap, { ...bolts, near: 0.2 }, hole])).toEqual(['sheets', 'height']);
    // Now it puts the bolts outside, which is worse.
    expect(order([gap, { ...bolts, high: 0.8 }, hole])).toEqual(['height', 'sheets']);
  });

  it('of two values at one distance takes the one that does less harm', () => {
    const ring: PlainLimit = { name: 'gap', of: (input) => Math.abs(input('height') - 250), low: 20 };
    const up = run([ring, { ...hole, high: 215 }], { choices: [height] }).remedies[0];
    expect(up?.first).toMatchObject({ value: 230 });
    const down = run([ring, { ...hole, low: 200 }], { choices: [height] }).remedies[0];
    expect(down?.first).toMatchObject({ value: 270 });
  });

  it('looks beyond a window too narrow for its coarse look', () => {
    const window: PlainLimit = { name: 'gap', of: (input) => Math.abs(input('height') - 340), high: 2 };
    const fine: Choice = { ...height, step: 1 };
    expect(run([window], { choices: [fine] }).remedies[0]?.first.value).toBe(338);
  });

  it('looks at every value of a limit that has no room', () => {
    const whole: PlainLimit = {
      name: 'gap',
      of: (input) => (input('height') === 337 ? 1 : 0),
      low: 1,
      graded: false,
    };
    expect(run([whole], { choices: [{ ...height, step: 1 }] }).remedies[0]?.first.value).toBe(337);
  });

  it('moves what the owner accepts only when nothing else helps', () => {
    const chosen: PlainLimit = { name: 'gap', of: (input) => 44 - input('least'), low: 0 };
    const inputs = { sheets: 3, height: 250, least: 50 };
    const found = run([chosen], { choices: [height], accepted: [accepted] }, inputs);
    expect(found).toMatchObject({ by: 'accepting', remedies: [{ choice: 'least', first: { value: 40 } }] });
    const other = run([gap], { choices: [sheets], accepted: [accepted] }, inputs);
    expect(other).toMatchObject({ by: 'change' });
    expect(other.remedies.map((it) => it.choice)).toEqual(['sheets']);
  });

  it('puts last what leaves more limits outside than now, and takes a further value that leaves none', () => {
    // The gap needs 220 or less; there the pit is outside, and holds again from 215 down.
    const pit: PlainLimit = {
      name: 'pit',
      of: (input) => Math.abs(input('height') - 225),
      low: 10,
    };
    const down = run([{ ...gap, low: 47, near: 0 }, pit], { choices: [height] }).remedies[0];
    expect(down?.first).toMatchObject({ value: 215, failing: 0 });
    // Two sheets more break two others, where one limit is outside now.
    const broken = ['a', 'b'].map((name): PlainLimit => ({ name, of: (input) => input('sheets'), high: 3 }));
    const found = run([gap, ...broken, { ...bolts, near: 0.3 }], { choices: [sheets, height] });
    expect(found.failing).toBe(1);
    expect(found.remedies.map((it) => [it.choice, it.first.failing])).toEqual([
      ['height', 0],
      ['sheets', 2],
    ]);
  });

  it('offers that a limit no longer applies only where nothing else helps', () => {
    const leaving: PlainLimit = { ...gap, applies: (input) => input('sheets') > 2 };
    const inputs = { sheets: 3, height: 250, least: 50 };
    const by = (ask: Partial<RemedyAsk>, it = leaving) => run([it], ask, inputs);
    const stuck: PlainLimit = { ...leaving, of: () => 44 };
    expect(by({ choices: [sheets, height] }).by).toBe('change');
    expect(by({ choices: [sheets] }, stuck)).toMatchObject({
      by: 'leaving',
      remedies: [{ choice: 'sheets', first: { value: 2, limit: { state: 'does not apply' } } }],
    });
    const given: PlainLimit = { ...stuck, of: (input) => 94 - input('least') };
    expect(by({ choices: [sheets], accepted: [accepted] }, given).by).toBe('accepting');
  });

  it('sets what belongs together, and yes and no as such', () => {
    const pin: Choice = {
      ...sheets,
      name: 'pin',
      also: ['line'],
      isFlag: true,
      present: 0,
      only: [1],
      counts: false,
    };
    const held: PlainLimit = {
      name: 'gap',
      of: (input) => input('pin') * input('line'),
      low: 1,
      graded: false,
    };
    const found = run([held], { choices: [pin] }, { sheets: 3, height: 250, pin: 0, line: 0 } as never);
    expect(found.remedies).toMatchObject([
      {
        inputs: ['pin', 'line'],
        first: {
          sets: [
            { input: 'pin', value: true },
            { input: 'line', value: true },
          ],
        },
      },
    ]);
  });

  it('finds nothing where nothing helps, and refuses a name that is no limit', () => {
    expect(run([{ ...gap, of: () => 1 }], { choices: [height, sheets] }).remedies).toEqual([]);
    expect(() => run([bolts], {})).toThrow('There is no limit named gap.');
  });

  it('yields after every evaluation, so that it can be stopped anywhere', () => {
    const evaluator = plainEvaluator({ sheets: 3, height: 250 }, [gap, bolts]);
    const study = remedies(evaluator, { limit: 'gap', choices: [height, sheets], accepted: [] });
    for (let i = 0; i < 10; i++) {
      const before = evaluator.count();
      study.next();
      expect(evaluator.count() - before).toBeLessThanOrEqual(2);
    }
  });
});
