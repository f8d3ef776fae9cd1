import { afterAll, describe, expect, it } from 'vitest';
import { oneStrutShare } from '../../src/calc/struts/share.ts';
import { newPlan } from '../../src/plan/new-plan.ts';
import type { Plan } from '../../src/plan/plan.ts';
import type { LimitAnswer } from '../../src/workbook/judged.ts';
import { Workbook } from '../../src/workbook/workbook.ts';
import { caseInputs, type Inputs } from './model-case.ts';

// Figures of the trade: common practice, no source. Each is put in as the owner would put in the gear's own, and the
// limit must turn exactly there.
const inches = (length: number): number => length * 25.4;

const plan = newPlan('Common practice');
const book = new Workbook(plan, null);
afterAll(() => book.destroy());

const limitOf = (name: string, changes: Inputs, judged: Plan = plan): LimitAnswer => {
  book.show(judged, null, new Map(Object.entries({ ...caseInputs, ...changes })));
  const limit = book.judgement().limits.find((it) => it.name === name);
  if (limit === undefined) throw new Error(`There is no limit ${name}.`);
  return limit;
};

/** One input moved until its result stands on the bound, then a thousandth to either side. */
function turns(name: string, fixed: Inputs, input: string, from: number, to: number): void {
  const isOut = (value: number): boolean =>
    limitOf(name, { ...fixed, [input]: value }).verdict.state === 'outside';
  expect([isOut(from), isOut(to)].sort()).toEqual([false, true]);
  let [held, lost] = isOut(from) ? [to, from] : [from, to];
  for (let step = 0; step < 45; step++) {
    const middle = (held + lost) / 2;
    if (isOut(middle)) lost = middle;
    else held = middle;
  }
  const on = limitOf(name, { ...fixed, [input]: held });
  expect(on.verdict.room).toBeCloseTo(0, 6);
  expect(on.verdict.state).toBe('near');
  expect(limitOf(name, { ...fixed, [input]: lost + Math.sign(lost - held) * 1e-3 }).verdict.state).toBe(
    'outside',
  );
}

/** The same for a value known beforehand. */
function turnsAt(name: string, fixed: Inputs, input: string, value: number, outward: 1 | -1): void {
  const at = (it: number) => limitOf(name, { ...fixed, [input]: it }).verdict;
  expect(at(value).state).toBe('near');
  expect(at(value).room).toBeCloseTo(0, 9);
  expect(at(value + outward * 1e-3).state).toBe('outside');
  expect(at(value - outward * 1e-3).state).toBe('near');
}

describe('common practice, no source: the limit turns exactly there', { timeout: 30_000 }, () => {
  it('bearing gap 2 to 10 in', () => {
    const bounds = { bearing_gap_min: inches(2), bearing_gap_max: inches(10) };
    // Bottom of the lower clamp at 250 − 40; the bearing 2 and 10 in below it.
    turnsAt('bearing_gap', bounds, 'shaft_foot_height', 210 - inches(2), 1);
    turnsAt('bearing_gap', bounds, 'shaft_foot_height', 210 - inches(10), -1);
    expect(limitOf('bearing_gap', { ...bounds, shaft_foot_height: 210 - inches(6) }).verdict.state).toBe(
      'inside',
    );
  });

  it('drive overlap of 6 in', () => {
    // Shaft top at 1100, upper clamp to 840, 12 mm left free: the overlap may be 248 at most, so 6 in leaves 95.6.
    const { verdict } = limitOf('drive_headroom', { drive_overlap: inches(6) });
    expect(verdict.room).toBeCloseTo(1100 - 840 - 12 - inches(6), 9);
    turnsAt(
      'drive_headroom',
      { drive_overlap: inches(6) },
      'upper_bracket_height',
      1100 - inches(6) - 12 - 40,
      1,
    );
  });

  it('a single strut of 18 in at most', () => {
    const single = { strut_count: 1, single_strut_max: inches(18) };
    turns('single_strut_cut', single, 'pin_forward', 0, -1000);
    expect(limitOf('single_strut_cut', single).high).toBeCloseTo(457.2, 9);
  });

  it('two strut tubes of 31 in', () => {
    const supply = { strut_supply_length: inches(31), strut_supply_count: 2 };
    turns('port_strut_cut', supply, 'port_foot_y', -170, -1000);
    expect(limitOf('strut_tubes_needed', supply)).toMatchObject({ value: 1, verdict: { state: 'inside' } });
    // Both struts over half a tube long: two tubes, and no third.
    const long = { ...supply, port_foot_y: -500, starboard_foot_y: 500 };
    expect(limitOf('strut_tubes_needed', long)).toMatchObject({ value: 2, verdict: { state: 'inside' } });
    expect(limitOf('strut_tubes_needed', { ...long, strut_supply_count: 1 }).verdict.state).toBe('outside');
  });

  it('arms spread 40° to 80°', () => {
    const bounds = { spread_min: 40, spread_max: 80 };
    turns('strut_spread', bounds, 'port_foot_y', -170, -60);
    turns('strut_spread', bounds, 'starboard_foot_y', 170, 500);
    expect(limitOf('strut_spread', bounds).verdict.state).toBe('inside');
  });

  it('10 mm through bolts: those of the case bear less than the 12 mm ones, by their stress areas', () => {
    const sleeved = { shim_sleeve: true };
    const twelve = limitOf('bolt_utilisation', { ...sleeved, bolt_diameter: 12 }).value as number;
    const ten = limitOf('bolt_utilisation', { ...sleeved, bolt_diameter: 10 }).value as number;
    // With sleeves no packing counts, so nothing but the areas of ISO 898-1 differs: 84.3 and 58.0 mm².
    expect(ten / twelve).toBeCloseTo(84.3 / 58, 9);
  });

  it('an edge distance of three bolt diameters, as a limit of the owner’s', () => {
    const judged: Plan = {
      ...plan,
      limits: [{ name: 'three_diameters', result: 'port_foot_edge', low: 3 * 12, near: 5 }],
    };
    // The foot's head is at 790 + 30, the transom's top 80 above it; at 834 it is 36.
    expect(limitOf('three_diameters', {}, judged).verdict).toMatchObject({ state: 'inside', room: 44 });
    expect(limitOf('three_diameters', { port_foot_height: 834 }, judged).verdict).toMatchObject({
      state: 'near',
      room: 0,
    });
    expect(limitOf('three_diameters', { port_foot_height: 834.001 }, judged).verdict.state).toBe('outside');
  });

  it('two brackets in every installation: with the upper one down on the lower nothing holds the shaft', () => {
    for (const height of [250, 200]) {
      const limit = limitOf('tube_utilisation', { upper_bracket_height: height });
      expect(limit.verdict.state).toBe('no answer');
      expect(limit.why).toContain('nothing holds the shaft');
    }
  });
});

describe('a single strut of 33.4 × 3.4', () => {
  /** What the upper clamp holds in the case, steering quietly and at stall. */
  const reactions = (): readonly [number, number] => {
    limitOf('strut_utilisation', { drag_ratio: 0, vane_rudder_swing: 0 });
    const stalled = book.answer('upper_reaction').value as number;
    const [side, steering] = ['side_force', 'steering_force'].map(
      (name) => book.answer(name).value as number,
    );
    return [(stalled * (steering as number)) / (side as number), stalled];
  };

  /** Lever from the shaft's axis to the foot's pin at which the tube bears all that it can, sideways alone. */
  const leverAtYield = (reaction: number, safety: number): number => {
    let [short, long] = [0, 5000];
    for (let step = 0; step < 60; step++) {
      const middle = (short + long) / 2;
      const share = oneStrutShare(reaction, 0, 0, 33.4, 3.4, 205, 193_000, safety, middle, 0) as number;
      if (share > 1) long = middle;
      else short = middle;
    }
    return short;
  };

  it('reaches its yield at steering load near the customary 18 in', () => {
    const [steering] = reactions();
    const lever = leverAtYield(steering, 1);
    // By hand: 205 MPa on the ring's 2186.4 mm³ is 448.2 N·m, over 1026 N.
    expect(lever).toBeCloseTo((205 * 2186.396) / steering, 2);
    expect(lever / inches(18)).toBeGreaterThan(0.9);
    expect(lever / inches(18)).toBeLessThan(1.1);
  });

  it('is far past it at stall, which is why both loads must be shown', () => {
    const [steering, stalled] = reactions();
    expect(stalled / steering).toBeCloseTo(1.3 / 0.35, 9);
    expect(leverAtYield(stalled, 1)).toBeLessThan(inches(6));
    const single = { strut_count: 1, single_strut_od: 33.4, single_strut_wall: 3.4 };
    expect(limitOf('strut_utilisation', single).verdict.state).toBe('outside');
  });
});
