import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { openPlan } from '../../src/plan/file/open-plan.ts';
import { newPlan } from '../../src/plan/new-plan.ts';
import type { Plan, Reading } from '../../src/plan/plan.ts';
import { sourcesOf } from '../../src/plan/sources.ts';
import { isStandIn, standIns, standInsBehind } from '../../src/plan/stand-ins.ts';

const opened = openPlan(readFileSync('demo-data/measured-afloat.plan.json', 'utf8'));
if (!opened.ok) throw new Error(opened.why);
const { plan } = opened;

const with_ = (of: Plan, name: string, reading: Reading): Plan => ({
  ...of,
  inputs: new Map(of.inputs).set(name, reading),
});

const unread = (of: Plan, name: string): Plan => {
  const reading = of.inputs.get(name);
  return reading === undefined ? of : with_(of, name, { ...reading, origin: 'stand-in' });
};

describe('what a cell is worked out from', () => {
  it('is traced through every formula, tables among it', () => {
    const sources = sourcesOf(plan, 'transom_rake', null);
    expect([...sources].sort()).toEqual([
      'list_reading',
      'transom_readings',
      'trim_mark_forward',
      'trim_mark_span',
      'trim_mark_stern',
    ]);
    expect([...sourcesOf(plan, 'transom_thickness', null)]).toEqual(['transom_thickness']);
  });

  it('comes to an end where cells follow from one another', () => {
    const formula = (of: string): Reading => ({ value: null, formula: `=${of}`, origin: 'reading' });
    const ring = with_(
      with_(plan, 'transom_top', formula('transom_bottom')),
      'transom_bottom',
      formula('transom_top'),
    );
    expect([...sourcesOf(ring, 'transom_top', null)]).toEqual([]);
  });
});

describe('a value worked out from a stand-in', () => {
  it('is one itself: trim not read makes stand-ins of all that it corrects', () => {
    expect(isStandIn(plan, 'transom_rake')).toBe(false);
    const trimless = unread(plan, 'trim_mark_stern');
    expect(standInsBehind(trimless, 'transom_rake')).toEqual(['trim_mark_stern']);
    for (const name of ['transom_rake', 'transom_top', 'rudder_overhang', 'main_rudder_head']) {
      expect(isStandIn(trimless, name), name).toBe(true);
    }
    expect(isStandIn(trimless, 'transom_camber_radius')).toBe(false);
    const more = standIns(trimless).filter((it) => !standIns(plan).includes(it));
    expect(more.length).toBeGreaterThan(4);
  });

  it('is none where nobody asks for the reading behind it', () => {
    // A new plan's survey has no rows: nothing rests on how the boat lies.
    expect(standIns(newPlan('New')).includes('list_reading')).toBe(false);
  });

  it('leaves choices choices', () => {
    const chosen = with_(plan, 'upper_bracket_height', {
      value: null,
      formula: '=shaft_foot_height + inner_skin * 200',
      origin: 'choice',
    });
    expect(isStandIn(chosen, 'inner_skin')).toBe(true);
    expect(isStandIn(chosen, 'upper_bracket_height')).toBe(false);
  });
});
