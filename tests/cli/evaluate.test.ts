import { describe, expect, it } from 'vitest';
import { limitCells } from '../../src/plan/book.ts';
import type { Evaluation } from '../../src/workbook/evaluation.ts';
import { command } from '../support/command.ts';
import { limitsOnRows } from '../workbook/limits-on-rows.ts';

const evaluate = (...args: string[]) => command('evaluate', args);

const answered = async (...args: string[]): Promise<Evaluation> => {
  const { code, out, err } = await evaluate('--json', ...args);
  expect(err).toBe('');
  expect(code).toBe(0);
  return JSON.parse(out) as Evaluation;
};

const stateOf = (it: Evaluation, name: string): string | undefined =>
  it.limits.find((limit) => limit.name === name)?.state;

describe('evaluate', () => {
  it('answers the base values of the template', async () => {
    const it = await answered();
    expect(it.results.rudder_gap).toBeCloseTo(56.886, 3);
    expect(it.least_room).toMatchObject({ name: 'bolt_utilisation' });
    expect(it.unanswered).toBe(0);
    expect(it.limits).toHaveLength(limitCells.length);
    expect(it.limits.map((limit) => limit.name)).toEqual(limitCells.map((limit) => limit.name));
    for (const name of limitsOnRows) expect([name, stateOf(it, name)]).toEqual([name, 'does not apply']);
    expect(stateOf(it, 'shaft_side_lean')).toBe('inside');
  });

  it('puts --set over the values, texts as a person types them', async () => {
    const it = await answered(
      '--set',
      'shim_count=3',
      '--set',
      'upper_bracket_height=35 7/16 in',
      '--set',
      'shim_sleeve=yes',
    );
    expect(it.results.rudder_gap).toBeCloseTo(44.7009, 4);
    expect(stateOf(it, 'rudder_gap')).toBe('outside');
    expect(it.results.bracket_spacing).toBeCloseTo(35.4375 * 25.4 - 250, 6);
    expect(it.results.lower_packing).toBe(0);
  });

  it('prints a table for people', async () => {
    const { code, out } = await evaluate('--set', 'shim_count=3');
    expect(code).toBe(0);
    expect(out.indexOf('rudder_gap ')).toBeLessThan(out.indexOf('bearing_gap '));
    expect(out).toContain('outside');
    expect(out).toContain('The gear maker’s manual comes first');
  });

  it.each([
    ['letters in a number', 'transom_rake=1o', /1o/],
    ['a fraction over nothing', 'shim_thickness=2 3/0', /cannot be 0/],
    ['a number too large', 'shim_thickness=1e400', /1e400/],
    ['a negative thickness', 'transom_thickness=-3', /more than 0/],
    ['half a shim', 'shim_count=3.5', /whole number/],
    ['a rake of 80°', 'transom_rake=80', /at most 60/],
    ['three struts', 'strut_count=3', /strut/i],
    ['a foreign unit', 'shim_thickness=7 kn', /kn/],
    ['thousands set apart', 'shaft_length=1,500', /1500/],
    ['an unknown name', 'rudder_shape=round', /no input named rudder_shape/],
    ['a result', 'rudder_gap=60', /rudder_gap is a result/],
    ['a wall of half the diameter', 'tube_wall=30.15', /tube_od.*tube_wall|tube_wall.*tube_od/],
    ['a stock wider than the bore', 'stock_diameter=53', /stock_diameter.*tube_od/],
    ['a head below its foot', 'main_rudder_head=-1300', /main_rudder_foot.*main_rudder_head/],
    ['a top below its bottom', 'transom_top=20', /transom_bottom.*transom_top/],
    ['more balance than chord', 'vane_rudder_balance=231', /vane_rudder_balance.*vane_rudder_chord/],
    ['a low bound above the high one', 'spread_min=95', /spread_min.*spread_max/],
    ['a camber radius short of a foot', 'transom_camber_radius=150', /transom_camber_radius.*port_foot_y/],
  ])('refuses %s with one sentence and nothing on standard output', async (_, set, sentence) => {
    const { code, out, err } = await evaluate('--json', '--set', set);
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err.trim().split('\n')).toHaveLength(1);
    expect(err).toMatch(sentence);
  });

  it.each([
    ['brackets swapped', ['upper_bracket_height=200'], 'upper_reaction', /not above/],
    ['a clamp off the tube', ['upper_bracket_height=1200'], 'upper_reaction', /top of the tube/],
    ['an empty cell', ['laminate_shear='], 'skin_utilisation', /empty/],
    ['arms parallel', ['pin_half_width=170'], 'strut_utilisation', /parallel/],
  ])('answers %s with no answer and the reason', async (_, sets, name, reason) => {
    const it = await answered(...sets.flatMap((set) => ['--set', set]));
    expect(it.results[name]).toBeNull();
    expect(it.reasons[name]).toMatch(reason);
    expect(it.unanswered).toBeGreaterThan(0);
  });

  it('has a reason for every null', async () => {
    const it = await answered(
      '--set',
      'rudder_gap_min=',
      '--set',
      'laminate_shear=',
      '--set',
      'upper_bracket_height=200',
    );
    for (const [name, value] of Object.entries(it.results)) {
      expect(it.reasons[name] === undefined, name).toBe(value !== null);
    }
    for (const limit of it.limits) {
      expect(limit.why === undefined, limit.name).toBe(limit.state !== 'no answer');
    }
    expect(it.limits.find((limit) => limit.name === 'rudder_gap')).toMatchObject({
      state: 'no answer',
      low: null,
      why: expect.stringContaining('is empty'),
    });
  });

  it('names the cells of a loop', async () => {
    const it = await answered('--set', 'shim_thickness=shim_stack/shim_count'.replace('=', '=='));
    expect(it.results.shim_stack).toBeNull();
    expect(it.reasons.shim_stack).toMatch(
      /loop.*shim_thickness.*shim_stack|loop.*shim_stack.*shim_thickness/,
    );
  });

  it('answers a foot off the transom as outside', async () => {
    const it = await answered('--set', 'port_foot_y=-700');
    expect(stateOf(it, 'port_foot_edge')).toBe('outside');
  });

  it('refuses what it does not understand', async () => {
    expect(await evaluate('--colour')).toMatchObject({ code: 2, out: '' });
    expect(await evaluate('--scenario', 'Nowhere')).toMatchObject({ code: 2, out: '' });
    expect(await evaluate('--plan', 'no-such.plan.json')).toMatchObject({ code: 2, out: '' });
  });

  it('answers a batch line by line, in order, bad lines included', async () => {
    const long = `{"shim_count": ${' '.repeat(70_000)}3}`;
    const lines = [
      '{"shim_count": 3}',
      '',
      '{"shim_count": "4"}',
      'nonsense',
      '{"shim_count": 3.5}',
      long,
      '{"lanyard": false}',
      '{}',
    ];
    const { code, out } = await command('evaluate', ['--batch'], lines.join('\n'));
    expect(code).toBe(0);
    const answers = out
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line) as Evaluation & { error?: string });
    expect(answers).toHaveLength(7);
    expect(answers[0]?.results.rudder_gap).toBeCloseTo(44.7009, 4);
    expect(answers[1]?.results.rudder_gap).toBeCloseTo(56.886, 3);
    expect(answers[2]?.error).toMatch(/JSON object/);
    expect(answers[3]?.error).toMatch(/whole number/);
    expect(answers[4]?.error).toMatch(/bytes/);
    expect(answers[5] && stateOf(answers[5], 'retained')).toBe('outside');
    expect(answers[6]?.results.rudder_gap).toBeCloseTo(56.886, 3);
  });
});
