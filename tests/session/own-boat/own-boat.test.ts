import { describe, expect, it } from 'vitest';
import { inputNamed } from '../../../src/plan/book.ts';
import type { InputCell } from '../../../src/plan/template.ts';
import { stateOf, textOf } from '../../../src/session/own-boat/kept-text.ts';
import {
  back,
  forward,
  leftToStandIn,
  nothingYet,
  type OwnBoatState,
  stepNow,
  withAnswer,
  withTyped,
} from '../../../src/session/own-boat/own-boat.ts';
import { planOf } from '../../../src/session/own-boat/plan-of.ts';
import { QUESTIONS } from '../../../src/session/own-boat/questions.ts';
import { readStep } from '../../../src/session/own-boat/read-step.ts';
import { firstGearInputs, firstInputs, stepsOf } from '../../../src/session/own-boat/steps.ts';

const cell = (name: string): InputCell => {
  const found = inputNamed(name);
  if (found === undefined) throw new Error(name);
  return found;
};

const answered = (units: string, lean: string, manual: string, lying = 'afloat'): OwnBoatState =>
  [
    ['units', units],
    ['lying', lying],
    ['lean', lean],
    ['manual', manual],
  ].reduce((state, [id, word]) => withAnswer(state, id as 'units', word as string), nothingYet);

const TYPED: Readonly<Record<string, string>> = {
  transom_rake: '12',
  transom_top: '35 1/2',
  transom_bottom: '1 5/8',
  transom_thickness: '3/4',
  main_rudder_head: '-4',
  main_rudder_foot: '-48',
  rudder_overhang: '2 3/8',
  rudder_overhang_foot: '60 mm',
  boat_speed: '9',
  shaft_length: '40',
  lower_reach: '6 1/4',
  vane_rudder_balance: '2',
};

/** What is typed for a first reading: the text above, or the stand-in as a person would read it. */
const typedFor = ({ name, value, unit }: InputCell): string => TYPED[name] ?? `${value} ${unit}`;

const all = (state: OwnBoatState): OwnBoatState =>
  firstInputs.reduce((so, it) => withTyped(so, it.name, typedFor(it)), state);

describe('the steps', () => {
  it('are the questions and then the readings marked as first', () => {
    const steps = stepsOf({ manual: 'yes' });
    expect(steps.map((it) => it.kind)).toEqual([
      ...QUESTIONS.map(() => 'question'),
      ...firstInputs.map(() => 'reading'),
    ]);
  });

  it('say once that the gear stays on stand-ins when there is no manual', () => {
    const steps = stepsOf({ manual: 'no' });
    expect(steps).toHaveLength(QUESTIONS.length + firstInputs.length - firstGearInputs.length + 1);
    expect(steps.at(-1)).toEqual({ kind: 'gear later' });
    expect(steps.some((it) => it.kind === 'reading' && it.cell.where === 'manual')).toBe(false);
  });

  it('go forward and back, never before the first, and keep what was typed', () => {
    const typed = withTyped(forward(forward(nothingYet)), 'transom_top', '2 3/0');
    expect(stepNow(typed)).toMatchObject({ question: { id: 'lean' } });
    expect(back(typed)).toMatchObject({ at: 1, typed: new Map([['transom_top', '2 3/0']]) });
    expect(back(back(back(typed))).at).toBe(0);
  });

  it('fill in 0 for an upright transom, and take it out when it leans after all', () => {
    const upright = withAnswer(nothingYet, 'lean', 'upright');
    expect(upright.typed.get('transom_rake')).toBe('0');
    expect(withAnswer(upright, 'lean', 'aft').typed.has('transom_rake')).toBe(false);
    expect(withAnswer(withTyped(upright, 'transom_rake', '4'), 'lean', 'aft').typed.get('transom_rake')).toBe(
      '4',
    );
  });
});

describe('readStep', () => {
  it('reads a bare number in the unit asked for', () => {
    const state = all(answered('in', 'aft', 'yes'));
    expect(readStep(state, cell('rudder_overhang'))).toMatchObject({
      ok: true,
      reading: { value: 60.325, typed: '2 3/8', unit: 'in', origin: 'reading' },
    });
    expect(readStep(state, cell('shaft_length'))).toMatchObject({
      ok: true,
      reading: { value: 1016, origin: 'manual' },
    });
  });

  it('asks for a reading or the stand-in when nothing is typed', () => {
    const read = readStep(nothingYet, cell('transom_top'));
    expect(read.ok ? '' : read.why).toBe(
      'Height of the transom’s upper edge is not read yet. Write it, or take the stand-in.',
    );
  });

  it('refuses what cannot be, and keeps the text', () => {
    const state = withTyped(nothingYet, 'transom_thickness', '2 3/0');
    expect(readStep(state, cell('transom_thickness')).ok).toBe(false);
    expect(state.typed.get('transom_thickness')).toBe('2 3/0');
  });

  it('holds a reading against those before it, not against those still to come', () => {
    const low = withTyped(nothingYet, 'transom_top', '20');
    expect(readStep(low, cell('transom_top')).ok).toBe(true);
    const both = withTyped(low, 'transom_bottom', '40');
    const read = readStep(both, cell('transom_bottom'));
    expect(read.ok ? '' : read.why).toMatch(/transom_bottom.*transom_top|transom_top.*transom_bottom/);
  });

  it('holds a stand-in against what was read', () => {
    const read = readStep(
      leftToStandIn(withTyped(nothingYet, 'transom_top', '20'), 'transom_bottom'),
      cell('transom_bottom'),
    );
    expect(read.ok).toBe(false);
  });

  it('leaves more room for error ashore', () => {
    const ashore = withTyped(answered('mm', 'aft', 'yes', 'ashore'), 'transom_rake', '12');
    expect(readStep(ashore, cell('transom_rake'))).toMatchObject({ reading: { value: 12, offBy: 1 } });
    expect(readStep(withTyped(ashore, 'transom_top', '900'), cell('transom_top'))).toMatchObject({
      reading: { offBy: 20 },
    });
    const afloat = withTyped(answered('mm', 'aft', 'yes'), 'transom_rake', '12');
    expect(readStep(afloat, cell('transom_rake'))).toMatchObject({ reading: { offBy: 0.2 } });
  });
});

describe('planOf', () => {
  it('puts every reading in, dated, and leaves the rest to stand-ins', () => {
    const planned = planOf(all(answered('in', 'forward', 'yes')), 'Own boat', '2026-05-01');
    if (!planned.ok) throw new Error(planned.why);
    expect(planned.plan.units).toBe('in');
    expect(planned.plan.inputs.get('transom_rake')).toMatchObject({
      value: -12,
      origin: 'reading',
      when: '2026-05-01',
    });
    const read = [...planned.plan.inputs.values()].filter((it) => it.when !== undefined);
    expect(read).toHaveLength(firstInputs.length);
    expect(planned.plan.inputs.get('transom_camber_radius')?.origin).toBe('stand-in');
  });

  it('uses no gear value without the manual, even one typed before', () => {
    const planned = planOf(all(answered('in', 'aft', 'no')), 'Own boat', '2026-05-01');
    if (!planned.ok) throw new Error(planned.why);
    expect(planned.plan.inputs.get('shaft_length')).toMatchObject({ value: 1000, origin: 'stand-in' });
    expect(planned.plan.inputs.get('transom_rake')).toMatchObject({ value: 12, origin: 'reading' });
  });

  it('keeps a reading left to its stand-in a stand-in', () => {
    const planned = planOf(
      leftToStandIn(all(answered('mm', 'aft', 'yes')), 'boat_speed'),
      'Own boat',
      '2026-05-01',
    );
    if (!planned.ok) throw new Error(planned.why);
    expect(planned.plan.inputs.get('boat_speed')).toMatchObject({ value: 8.75, origin: 'stand-in' });
  });

  it('leans the stand-in of the slope the way the transom was said to lean', () => {
    const slopes = ['aft', 'upright', 'forward'].map((lean) => {
      const planned = planOf(
        leftToStandIn(all(answered('mm', lean, 'yes')), 'transom_rake'),
        '',
        '2026-05-01',
      );
      return planned.ok ? planned.plan.inputs.get('transom_rake') : planned.why;
    });
    expect(slopes).toEqual([
      expect.objectContaining({ value: 10, origin: 'stand-in' }),
      expect.objectContaining({ value: 0, origin: 'stand-in' }),
      expect.objectContaining({ value: -10, origin: 'stand-in' }),
    ]);
  });

  it('names the first step that cannot stand', () => {
    const state = withTyped(all(answered('in', 'aft', 'yes')), 'transom_top', 'tall');
    expect(planOf(state, 'Own boat', '2026-05-01')).toMatchObject({ ok: false, at: 5 });
    expect(planOf(nothingYet, 'Own boat', '2026-05-01')).toMatchObject({ ok: false, at: 0 });
  });
});

describe('a state kept as text', () => {
  it('comes back as it was', () => {
    const state = { ...leftToStandIn(all(answered('in', 'forward', 'no')), 'boat_speed'), at: 7 };
    expect(stateOf(textOf(state))).toEqual(state);
  });

  it.each([
    null,
    '',
    '{',
    '[]',
    '{"version":2}',
    '{"version":1,"answers":{"units":"ell"},"typed":[],"left":[],"at":0}',
  ])('is nothing yet for %j', (text) => {
    expect(stateOf(text)).toEqual(nothingYet);
  });

  it('takes no reading that is not asked for', () => {
    const text = JSON.stringify({
      version: 1,
      answers: {},
      typed: [
        ['__proto__', '1'],
        ['tube_od', '2'],
      ],
      left: ['x'],
      at: 99,
    });
    expect(stateOf(text)).toEqual({ ...nothingYet, at: stepsOf({}).length });
  });
});
