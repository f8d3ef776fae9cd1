import { describe, expect, it } from 'vitest';
import { PAPERS } from '../../../src/sheets/page/paper.ts';
import { demoPlan } from '../../support/sheets.ts';
import { allTold } from './all-told.ts';
import { DEMOS, disagreements, randomPrints, UNITS } from './random-prints.ts';
import { agree, compare } from './told.ts';

describe('two that tell the same', () => {
  it('agree as words, or as roundings of one value', () => {
    expect(agree('M12 × 110', 'M12 × 110')).toBe(true);
    expect(agree('M12 × 110', 'M12 × 120')).toBe(false);
    expect(agree('194.8 mm (7 11⁄16 in)', '195 mm (7 11⁄16 in)')).toBe(true);
    expect(agree('194.8 mm', '194.9 mm')).toBe(true);
    expect(agree('194.8 mm', '195.2 mm')).toBe(false);
    expect(agree('7 11⁄16 in', '7 3⁄4 in')).toBe(true);
    expect(agree('7 11⁄16 in', '7 7⁄8 in')).toBe(false);
    expect(agree('locking nut', 'nut, and a thin second nut')).toBe(false);
  });
});

describe.each(DEMOS)('%s', (name) => {
  const plan = demoPlan(name);
  const scenarios = [null, ...plan.scenarios.map((it) => it.name)];

  // Papers and scenarios in turn: the long run takes each with each.
  it.each(UNITS.map((units, i) => [units, (i + DEMOS.indexOf(name)) % 2, i] as const))(
    'tells one thing in one way, in %s',
    async (units, paper, turn) => {
      const scenario = scenarios[turn % scenarios.length] ?? null;
      const { told, missing } = await allTold(plan, scenario, PAPERS[paper] ?? 'a4', units);
      const { differs, shared } = compare(told);
      expect([scenario, differs, missing]).toEqual([scenario, [], []]);
      expect(shared).toBeGreaterThan(60);
    },
    30_000,
  );
});

it('any plan tells one thing in one way', async () => {
  for (const drawn of randomPrints(2, 3)) expect(await disagreements(drawn)).toEqual([]);
}, 120_000);
