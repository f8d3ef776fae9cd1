import { describe, expect, it } from 'vitest';
import { stopPoints } from '../../src/fitting/stop-points.ts';
import { tighteningOrder } from '../../src/fitting/tightening.ts';
import type { Ask } from '../../src/order/ask.ts';

const asking =
  (values: Readonly<Record<string, number>>): Ask =>
  (name) =>
    values[name];

const plan = {
  bracket_spacing: 550,
  shaft_lean: 0.5,
  lean_max: 1,
  rudder_gap_min: 50,
  strut_count: 2,
  transom_thickness: 20,
  torque_first: 18,
};

const must = (name: string, ask: Ask): string =>
  stopPoints(ask, 'mm').find((it) => it.name === name)?.must ?? '';

describe('stopPoints', () => {
  it('say the offset of the bob that the plan allows', () => {
    // By hand: 550·tan 0.5° = 4.8, 550·tan 1° = 9.6 mm.
    const words = must('second hole', asking(plan));
    expect(words).toContain('reads 4.8 mm at the lower');
    expect(words).toContain('give or take 9.6 mm');
    expect(words).toContain('550 mm below');
  });

  it('follow the plan, and say what is missing rather than a number', () => {
    expect(must('second hole', asking({ ...plan, bracket_spacing: 275 }))).toContain('give or take 4.8 mm');
    expect(must('second hole', asking({ strut_count: 2 }))).toContain('has no answer');
    expect(must('feet', asking(plan))).toContain('at least 50 mm apart');
  });

  it('speak of one foot where there is one', () => {
    const before = (count: number): string =>
      stopPoints(asking({ ...plan, strut_count: count }), 'mm')
        .map((it) => it.before)
        .join(' ');
    expect(before(1)).toContain('holes of the foot');
    expect(before(2)).toContain('holes of the feet');
  });

  it('cut long by what the plan says', () => {
    const cut = (ask: Ask) => stopPoints(ask, 'mm').find((it) => it.name === 'cut')?.otherwise;
    expect(cut(asking({ ...plan, strut_trial_extra: 30 }))).toBe(
      'Do not cut. Then cut 30 mm long, try it, trim.',
    );
    expect(cut(asking(plan))).toBe('Do not cut. Then cut long, try it, trim.');
  });

  it('always say what to do instead, and when to call the yard', () => {
    const all = stopPoints(asking(plan), 'both');
    for (const it of all) expect(it.otherwise.length).toBeGreaterThan(20);
    expect(all.filter((it) => it.otherwise.includes('yard')).length).toBeGreaterThan(1);
  });
});

describe('tighteningOrder', () => {
  it('goes from the hull to the shaft', () => {
    expect(tighteningOrder(asking(plan)).map((it) => it.name)).toEqual([
      'hull, lower',
      'hull, feet',
      'tubes',
      'hinges',
      'shaft',
      'again',
    ]);
  });

  it('puts the gear’s manual before the estimate', () => {
    const [first] = tighteningOrder(asking(plan));
    expect(first?.what).toMatch(/manual; 18 N·m \(13 lbf·ft\) to begin with is an estimate/);
    expect(tighteningOrder(asking({ strut_count: 1 }))[0]?.what).not.toMatch(/\d+ N·m/);
  });
});
