import { describe, expect, it } from 'vitest';
import { driversAsk, oddsAsk, turningAsk } from '../../../src/session/studies/asks.ts';
import { variedInputs } from '../../../src/session/studies/varied-inputs.ts';
import { demoPlan } from '../../studies/plan-points.ts';

const plan = demoPlan();

describe('what may be off in a plan', () => {
  const inputs = variedInputs(plan, null);

  it('is every number with its ±, its law, its instrument and its bounds', () => {
    const rake = inputs.find((it) => it.name === 'transom_rake');
    expect(rake).toMatchObject({
      value: -10,
      offBy: 0.2,
      law: 'rectangular',
      with: 'level',
      least: -60,
      most: 60,
    });
    expect(inputs.find((it) => it.name === 'shim_count')).toMatchObject({ whole: true, offBy: 0 });
    expect(inputs.some((it) => it.name === 'transom_build')).toBe(false);
  });

  it('follows the scenario', () => {
    const shims = (scenario: string) =>
      variedInputs(plan, scenario).find((it) => it.name === 'shim_count')?.value;
    expect([shims('Three shims'), shims('Four shims')]).toEqual([3, 4]);
  });
});

describe('asks', () => {
  it('take the share from the settings, and not one that cannot be', () => {
    expect(oddsAsk(plan, null, { share: 0.5 }).share).toBe(0.5);
    expect(driversAsk(plan, null, [], { share: 7 }).share).toBe(0);
    expect(oddsAsk(plan, null, {}).errors.every((it) => it.offBy > 0)).toBe(true);
  });

  it('look for turning values over the usual range, the present value inside it', () => {
    const ask = turningAsk(plan, 'Upper bracket raised', 'upper_bracket_height');
    expect(ask.present).toBe(900);
    expect(ask.low).toBeLessThanOrEqual(900);
    expect(ask.high).toBeGreaterThanOrEqual(900);
    expect(() => turningAsk(plan, null, 'transom_build')).toThrow('no range');
    expect(() => turningAsk(plan, null, 'nothing')).toThrow('There is no input named nothing.');
  });
});
