import { describe, expect, it } from 'vitest';
import { orderOfWork } from '../../src/fitting/order-of-work.ts';
import { stopPoints } from '../../src/fitting/stop-points.ts';
import { openStops, type Stop, type StopsGiven, stopsBefore } from '../../src/fitting/stops.ts';
import type { Ask } from '../../src/order/ask.ts';
import type { StepDone } from '../../src/plan/plan.ts';

const values: Readonly<Record<string, number | boolean>> = {
  strut_count: 2,
  transom_thickness: 18,
  rudder_gap_min: 50,
  shim_count: 4,
  lower_flange_hinged: true,
};
const ask: Ask = (name) => values[name];
const steps = orderOfWork({ ask, units: 'mm' });
const points = stopPoints(ask, 'mm');
const now = new Date(2031, 3, 9, 12, 0);

const when = '2031-04-09 10:00';
/** What was read where nothing is wrong. */
const READ: Readonly<Record<string, number>> = { pilot: 18, trial_struts: 57 };
const doneUpTo = (name: string): StepDone[] =>
  steps
    .slice(
      0,
      steps.findIndex((it) => it.name === name),
    )
    .map((it) => {
      const value = READ[it.name];
      return { step: it.name, done: true, when, ...(value === undefined ? {} : { value }) };
    });
const allPoints: StepDone[] = points.map(({ name }) => ({
  step: `stop_${name.replace(/ /g, '_')}`,
  done: true,
}));

const before = (name: string, given: Partial<StopsGiven>): readonly Stop[] => {
  const step = steps.find((it) => it.name === name);
  if (step === undefined) throw new Error(`There is no step ${name}.`);
  return stopsBefore(step, {
    ...{ steps, points, done: [...doneUpTo(name), ...allPoints], units: 'mm', now, limits: [], standIns: [] },
    ...given,
  });
};
const keys = (stops: readonly Stop[]): readonly string[] => stops.map((it) => it.stop);

const HOURS: StepDone[] = [
  { step: 'epoxy_hours', done: false, value: 1 },
  { step: 'sealant_hours', done: false, value: 1 },
];

describe('what stops a step that cannot be taken back', () => {
  it('is nothing where everything before it is done and met', () => {
    for (const { name, gate } of steps) {
      if (gate === undefined) continue;
      const done = [...doneUpTo(name), ...allPoints, ...HOURS];
      expect(keys(before(name, { done })), name).toEqual([]);
    }
  });

  it('is a reading that is not met, by how much it is beyond, for the steps after it and not its own', () => {
    const read: StepDone[] = [...doneUpTo('first_hole'), ...allPoints].map((it) =>
      it.step === 'pilot' ? { ...it, value: 24 } : it,
    );
    const [stop] = before('first_hole', { done: read });
    expect(stop?.stop).toBe('reading_pilot');
    // By hand: 18 + 3 are allowed, so 24 is 3 beyond.
    expect(stop?.by).toBeCloseTo(3, 12);
    expect(stop?.says).toContain('24 mm');
    expect(stop?.otherwise).toContain('call the yard');
    expect(keys(before('pilot', { done: [...read] }))).toEqual([]);
  });

  it('is a reading that a ticked step ought to have and has not', () => {
    const done = doneUpTo('one_foot_hole').map(({ step, done }) => ({ step, done }));
    expect(keys(before('one_foot_hole', { done: [...done, ...allPoints] }))).toEqual([
      'no_reading_pilot',
      'no_reading_trial_struts',
    ]);
  });

  it('is each step that was skipped, and each stop point that was passed', () => {
    const done = doneUpTo('second_hole').filter((it) => it.step !== 'shaft_line');
    expect(keys(before('second_hole', { done }))).toEqual([
      'tick_shaft_line',
      'stop_inside',
      'stop_core',
      'stop_second_hole',
    ]);
  });

  it('is a lean beyond what is accepted, to either side', () => {
    const leans = { seen: { aft: 0, side: 0 }, boat: { aft: -0.4, side: -1.5 }, lieRead: true };
    const [stop, ...others] = before('second_hole', { leans, leanMax: 1 });
    expect(stop?.says).toContain('leans 1.5° to port');
    expect(stop?.by).toBeCloseTo(0.5, 12);
    expect(others).toEqual([]);
  });

  it('is epoxy and sealant that have not had their hours, or whose hours nobody entered', () => {
    const [epoxy] = before('bed', {});
    expect(epoxy?.stop).toBe('wait_harden');
    expect(epoxy?.says).toContain('enter the hours');
    const hours = (value: number): StepDone[] => [
      ...doneUpTo('tighten_hull_lower'),
      ...allPoints,
      { step: 'epoxy_hours', done: false, value },
      { step: 'sealant_hours', done: false, value: 24 },
    ];
    // Laid at ten, it is twelve.
    expect(keys(before('tighten_hull_lower', { done: hours(2) }))).toEqual(['wait_cure']);
    expect(keys(before('tighten_hull_lower', { done: hours(2.01) }))).toEqual(['wait_harden', 'wait_cure']);
  });

  it('is whatever limit or stand-in it is told of, and never anything for a step that can be taken back', () => {
    const wrong = { about: 'rudder_gap', cell: 'rudder_gap', says: 'Too near.', by: 5.3 };
    const given = { limits: [wrong], standIns: [{ about: 'tube_od', cell: 'tube_od', says: 'Made up.' }] };
    expect(keys(before('cut_struts', given))).toEqual(['limit_rudder_gap', 'stand_in_tube_od']);
    expect(before('mark_feet', { ...given, done: [] })).toEqual([]);
  });
});

describe('a reason to go on', () => {
  const stop: Stop = { kind: 'limit', stop: 'limit_x', about: 'x', says: 'It is 5.3 short.', by: 5.3 };
  const went = (by?: number) => [
    {
      step: 'pilot',
      because: 'so',
      despite: [{ stop: 'limit_x', says: '', ...(by === undefined ? {} : { by }) }],
    },
  ];

  it('covers what it was given for, as long as that is no worse', () => {
    expect(openStops([stop], [])).toEqual([stop]);
    expect(openStops([stop], went(5.3))).toEqual([]);
    expect(openStops([{ ...stop, by: 5 }], went(5.3))).toEqual([]);
    expect(openStops([{ ...stop, by: 5.4 }], went(5.3))).toHaveLength(1);
    expect(openStops([{ ...stop, stop: 'limit_y' }], went(5.3))).toHaveLength(1);
    expect(openStops([stop], went())).toEqual([]);
  });
});
