import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tan } from '../../src/calc/angle.ts';
import { addTableRows, type Edited, setReading } from '../../src/plan/edit.ts';
import { newPlan } from '../../src/plan/new-plan.ts';
import type { Plan, Value } from '../../src/plan/plan.ts';
import { Workbook } from '../../src/workbook/workbook.ts';
import { againstGravity, readingsOf } from '../calc/survey/known-boat.ts';
import { limitsOnRows } from './limits-on-rows.ts';

const done = (it: Edited): Plan => {
  if (!it.ok) throw new Error(it.why);
  return it.plan;
};
const put = (plan: Plan, name: string, value: Value | { formula: string }): Plan =>
  done(
    setReading(plan, name, {
      ...(typeof value === 'object' && value !== null ? { value: null, ...value } : { value }),
      origin: 'reading',
    }),
  );
const rows = (plan: Plan, table: string, values: readonly (readonly (number | null)[])[]): Plan =>
  done(
    addTableRows(
      plan,
      table,
      values.map((it) => ({ values: it, note: null })),
    ),
  );

const BARE = newPlan('Survey');
const book = new Workbook(BARE, null);
const ask = (plan: Plan, name: string): number => {
  book.show(plan, null);
  const { value, why } = book.answer(name);
  if (typeof value !== 'number') throw new Error(`${name}: ${why ?? value}`);
  return value;
};
const stateOf = (plan: Plan, name: string): string | undefined => {
  book.show(plan, null);
  return book.judgement().limits.find((it) => it.name === name)?.verdict.state;
};

/** A boat that lies with some trim and list, as its owner would put it into the survey. */
const surveyed = (
  x: (z: number) => number,
  heights: readonly number[],
  { trim, list, zero = 0, lineAft = 480 }: { trim: number; list: number; zero?: number; lineAft?: number },
): Plan => {
  const face = heights.map((z) => [x(z), z] as const);
  const lie: readonly (readonly [string, Value])[] = [
    ['list_reading', list],
    ['trim_mark_stern', 40],
    ['trim_mark_forward', 40 - 9000 * tan(trim)],
    ['trim_mark_span', 9000],
    ['tape_zero_height', zero],
  ];
  const plan = lie.reduce((it, [name, value]) => put(it, name, value), BARE);
  return rows(plan, 'transom_readings', readingsOf(face, lineAft, zero, trim, list));
};

describe('a held-out survey', () => {
  it('gives back rake, rudder and heights, and what is taken over follows them', () => {
    fc.assert(
      fc.property(
        fc.record({
          rake: fc.double({ min: -25, max: 25, noNaN: true }),
          trim: fc.double({ min: -3, max: 3, noNaN: true }),
          list: fc.double({ min: -5, max: 5, noNaN: true }),
          zero: fc.double({ min: -200, max: 200, noNaN: true }),
        }),
        ({ rake, trim, list, zero }) => {
          const heights = [60, 250, 440, 630, 820];
          let plan = surveyed((z) => z * tan(rake), heights, { trim, list, zero });
          const edge = (z: number) => 35 - ((z + 100) * 23) / 1100;
          const under = [-160, -400, -800, -1150].map((z) => [edge(z), z] as const);
          plan = rows(plan, 'rudder_readings', readingsOf(under, 480, zero, trim, list));
          const top = againstGravity(900 * tan(rake), 900, trim, list);
          plan = put(plan, 'top_reading', top.up);
          plan = put(plan, 'transom_rake', { formula: '=survey_rake' });
          plan = put(plan, 'rudder_overhang', { formula: '=survey_overhang_head' });
          plan = put(plan, 'transom_top', { formula: '=survey_top' });
          expect(ask(plan, 'transom_rake')).toBeCloseTo(rake, 6);
          expect(ask(plan, 'rudder_overhang')).toBeCloseTo(edge(-100), 4);
          expect(ask(plan, 'survey_overhang_foot')).toBeCloseTo(edge(-1200), 4);
          expect(ask(plan, 'transom_top')).toBeCloseTo(900, 5);
          expect(ask(plan, 'transom_slope')).toBeCloseTo(rake, 6);
          expect(ask(plan, 'survey_hollow')).toBeCloseTo(0, 4);
        },
      ),
      { numRuns: 25 },
    );
  });

  it('follows the measured face only when asked, and then everywhere', () => {
    const bent = (z: number) => (z < 400 ? 0.1 * z : 40 + 0.3 * (z - 400));
    const plan = put(surveyed(bent, [0, 200, 400, 600, 800], { trim: 0, list: 0 }), 'transom_rake', {
      formula: '=survey_rake',
    });
    const followed = put(plan, 'follow_profile', true);
    const line = ask(plan, 'survey_line_aft') - 480;
    expect(ask(plan, 'transom_slope')).toBeCloseTo(ask(plan, 'survey_rake'), 9);
    expect(Math.tan((ask(followed, 'transom_slope') * Math.PI) / 180)).toBeCloseTo(0.1, 9);
    expect(ask(followed, 'shaft_x')).toBeCloseTo(bent(250) + line + ask(followed, 'standoff'), 6);
    expect(ask(plan, 'slope_measured_face')).toBe(ask(followed, 'transom_slope'));
    expect(ask(plan, 'face_off_straight')).toBeCloseTo(
      bent(250) + line - 250 * tan(ask(plan, 'survey_rake')),
      6,
    );
  });

  it('hollows a pad by the slope of the measured face at the foot’s own height', () => {
    const bent = (z: number) => (z < 400 ? 0.1 * z : 40 + 0.9 * (z - 400));
    const face = surveyed(bent, [0, 200, 400, 600, 800], { trim: 0, list: 0 });
    const curved = put(put(face, 'transom_camber_radius', 2500), 'follow_profile', true);
    // By Meusnier's theorem the radius square to a face that rises 9 in 10 aft is longer by √(1 + 0.81) on the
    // centreline; off it, the turn counts as well.
    const turn = 170 / Math.sqrt(2500 ** 2 - 170 ** 2);
    const radius = (2500 * Math.hypot(1, turn, 0.9)) / Math.hypot(1, turn);
    const sagitta = (chord: number) => radius - Math.sqrt(radius ** 2 - (chord / 2) ** 2);
    expect(ask(curved, 'port_pad_upright')).toBeCloseTo(sagitta(60), 9);
    expect(ask(curved, 'starboard_pad_lying')).toBeCloseTo(sagitta(120), 9);
    const straight = put(curved, 'follow_profile', false);
    expect(Math.abs(ask(straight, 'port_pad_upright') - sagitta(60))).toBeGreaterThan(1e-3);
  });

  it('lets a row that may be further off count less, in slope and in camber', () => {
    const plan = surveyed((z) => 0.2 * z, [0, 200, 400, 600], { trim: 0, list: 0 });
    const withRow = (offBy?: number): Plan =>
      done(
        addTableRows(plan, 'transom_readings', [
          { values: [800, 480 - 160 - 12], note: offBy === undefined ? null : { offBy } },
        ]),
      );
    const [clean, plain] = [ask(plan, 'survey_rake'), ask(withRow(), 'survey_rake')];
    expect(plain - clean).toBeGreaterThan(0.3);
    expect(ask(withRow(3), 'survey_rake')).toBe(plain);
    expect(ask(withRow(300), 'survey_rake')).toBeCloseTo(clean, 3);
    const gaps = (offBy: number) =>
      done(
        addTableRows(BARE, 'camber_readings', [
          { values: [300, 18.0652708018288], note: null },
          { values: [-300, 30], note: { offBy } },
        ]),
      );
    // Sagitta of a 600 mm chord on R 2500, closed form; the wrong row all but gone.
    expect(ask(gaps(1000), 'survey_camber_radius')).toBeCloseTo(2500, 1);
    expect(ask(gaps(1), 'survey_camber_radius')).toBeLessThan(2000);
  });

  it('says which rows do not go with the rest, and still counts them', () => {
    const plan = surveyed((z) => 0.2 * z, [0, 100, 200, 300, 400, 500, 600], { trim: 0, list: 0 });
    expect(ask(plan, 'transom_suspicious')).toBe(0);
    const wrong = rows(plan, 'transom_readings', [[700, 480 - 140 - 60]]);
    expect(ask(wrong, 'transom_suspicious')).toBe(1);
    expect(ask(wrong, 'survey_rake')).not.toBeCloseTo(ask(plan, 'survey_rake'), 1);
  });
});

describe('what is listed round the mount', () => {
  it('judges nothing while nothing is listed', () => {
    for (const name of limitsOnRows) expect([name, stateOf(BARE, name)]).toEqual([name, 'does not apply']);
    expect(limitsOnRows).toContain('port_foot_clear');
  });

  it('judges flanges outside, holes inside and at the border', () => {
    // The port foot is centred 170 to port at 790, 120 wide and 60 high.
    const outside = rows(BARE, 'keep_outs_outside', [[-260, -235, 700, 800]]);
    expect(ask(outside, 'port_foot_clear')).toBeCloseTo(5, 9);
    expect(stateOf(outside, 'port_foot_clear')).toBe('outside');
    expect(stateOf(outside, 'single_foot_clear')).toBe('does not apply');
    expect(stateOf(outside, 'port_foot_holes_border')).toBe('inside');
    // The lower bolts stand 70 to each side at 250: 30 below a stringer, less half of 12.
    const inside = rows(BARE, 'keep_outs_inside', [[-400, 400, 280, 320]]);
    expect(ask(inside, 'lower_holes_clear')).toBeCloseTo(24, 9);
    expect(stateOf(inside, 'lower_holes_clear')).toBe('outside');
    expect(stateOf(inside, 'lower_clear')).toBe('does not apply');
    // A plate of 15 000 mm² is 122.47 square, so it reaches to 311.2: into the stringer, which ends 320 high.
    expect(ask(inside, 'lower_plates_clear')).toBeCloseTo(280 - 250 - Math.sqrt(15000) / 2, 9);
    expect(stateOf(inside, 'lower_plates_clear')).toBe('outside');
    expect(stateOf(inside, 'port_foot_plates_clear')).toBe('inside');
    expect(stateOf(BARE, 'lower_plates_clear')).toBe('does not apply');
  });

  it('lets clamp, foot, top and struts follow the lean to the side', () => {
    // The lower clamp holds: 550 mm up and 150 mm down from it at 2°, tan 2° = 0.034921.
    const leans = put(BARE, 'shaft_side_lean', 2);
    expect(ask(leans, 'upper_clamp_offset')).toBeCloseTo(19.2065, 3);
    expect(ask(leans, 'shaft_foot_offset')).toBeCloseTo(-5.2381, 3);
    // The tube's 1000 mm stand 999.3912 high: 1/√(1 + tan² 2°).
    expect(ask(leans, 'shaft_top_offset')).toBeCloseTo(29.6614, 3);
    // Pins 40 mm to each side, feet 170: the port strut spans 219.5647 aft, 149.2065 athwart (130 upright) and 3 up
    // from the foot pin, the starboard 110.7935; both less 50 for their ends.
    const [port, starboard] = [ask(leans, 'port_strut_cut'), ask(leans, 'starboard_strut_cut')];
    const up = (219.5647 ** 2 + 130 ** 2) ** 0.5 * Math.tan((0.6857 * Math.PI) / 180);
    expect(port).toBeCloseTo(Math.hypot(219.5647, 149.2065, up) - 50, 2);
    expect(starboard).toBeCloseTo(Math.hypot(219.5647, 110.7935, up) - 50, 2);
    // The holes stay where they were drilled.
    expect(ask(leans, 'lowest_hole')).toBe(ask(BARE, 'lowest_hole'));
  });

  it('judges the lean to the side within what is accepted either way', () => {
    const lean = (value: number) => put(BARE, 'shaft_side_lean', value);
    expect(stateOf(BARE, 'shaft_side_lean')).toBe('inside');
    expect(stateOf(lean(-0.7), 'shaft_side_lean')).toBe('inside');
    expect(stateOf(lean(1), 'shaft_side_lean')).toBe('near');
    expect(stateOf(lean(1.01), 'shaft_side_lean')).toBe('outside');
    expect(stateOf(lean(-1.01), 'shaft_side_lean')).toBe('outside');
    // A boat that lists 1.5° to starboard: an upright shaft reads 1.5°, one that leans 0.3° to port 1.2°.
    expect(ask(put(lean(-0.3), 'list_reading', 1.5), 'shaft_level_athwart')).toBeCloseTo(1.2, 12);
  });

  it('judges what turns above against obstacles', () => {
    const backstay = rows(BARE, 'obstacles', [[-200, 0, 900, 12000, 4]]);
    // The shaft's axis is upright at 164.6587 with four shims.
    expect(ask(backstay, 'vane_air_gap')).toBeCloseTo(ask(BARE, 'shaft_x') + 200 - 350 - 4, 6);
    expect(stateOf(backstay, 'vane_air_gap')).toBe('outside');
    expect(stateOf(backstay, 'drive_air_gap')).toBe('inside');
  });
});
