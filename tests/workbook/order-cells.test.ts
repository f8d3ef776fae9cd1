import { describe, expect, it } from 'vitest';
import type { CellName } from '../../src/plan/names.ts';
import { caseAsk } from '../order/case-ask.ts';

/** Each value worked by hand beside it. */
describe('what the order rests on, in the case to start from', () => {
  const ask = caseAsk();
  const rad = Math.PI / 180;
  it.each<[CellName, number, string]>([
    ['wedge_thick_edge', 0, 'hinged'],
    ['wedge_angle', 0, 'hinged'],
    ['shim_sheet_area', 4 * 202 * 142, '4 sheets of 200 × 140 with a 2 mm saw'],
    ['lower_pad_hollow', 0, 'flat'],
    ['lower_hole_shift', 48 * Math.sin(10 * rad), 'a face leaning forward: bolts rise aft'],
    ['lower_thread_beyond', 110 - 87 - 2 * 2.7 - 10.8, 'ISO 7089, ISO 4032'],
    ['foot_thread_beyond', 60 - 39 - 2 * 2.7 - 10.8, 'ISO 7089, ISO 4032'],
    ['port_strut_trial', 205.1823 + 20, 'cut and 20 mm more'],
    ['hull_bolt_count', 6, 'two at the bracket, two at each foot'],
    ['bed_volume', 150 * 0.3 * 6 * 1.3, '150 cm² × 0.3 cm × 6, and three tenths more'],
    ['sealant_length', 680 + 48 * Math.PI + 2 * (360 + 48 * Math.PI), 'edges, and six rings of 24 mm'],
    ['clamp_force', 200 * 84.3, 'ISO 898-1: the laminate would bear more'],
    ['torque_low', 0.12 * 200 * 84.3 * 0.012, 'T = K F d'],
    ['torque_high', 0.3 * 200 * 84.3 * 0.012, 'T = K F d'],
  ])('%s is %s: %s', (name, value) => {
    expect(ask(name)).toBeCloseTo(value, 3);
  });

  it('asks for no pads on a flat face, and for them where it curves', () => {
    const needs = (at: typeof ask) =>
      (['lower_pad_needed', 'pads_upright_needed', 'pads_lying_needed'] as const).map((name) => at(name));
    expect(needs(ask)).toEqual([false, false, false]);
    // R 1000 upright: sagittas 5.01 of 200 mm, 0.45 of 60 mm, 1.80 of 120 mm; the sealant takes up 1.
    const curved = caseAsk({ transom_camber_radius: 1000, transom_rake: 0 });
    expect(curved('port_pad_upright')).toBeCloseTo(1000 - Math.sqrt(1e6 - 900), 9);
    expect(curved('starboard_pad_lying')).toBeCloseTo(1000 - Math.sqrt(1e6 - 3600), 9);
    expect(needs(curved)).toEqual([true, false, true]);
  });

  it('wedges a rigid flange: 3 mm, and 140·tan 10° more at the other edge', () => {
    const rigid = caseAsk({ lower_flange_hinged: false });
    expect(rigid('wedge_thick_edge')).toBeCloseTo(3 + 140 * Math.tan(10 * rad), 9);
    expect(rigid('wedge_angle')).toBe(10);
  });

  it('takes the manual’s torque before its own, and never pulls past what the laminate bears', () => {
    expect(caseAsk({ gear_torque: 25 })('torque_first')).toBe(25);
    expect(ask('torque_first')).toBe(ask('torque_low'));
    // A washer alone on soft laminate: π/4·(24² − 12²)·2 = 678.6 N.
    const soft = caseAsk({ plate_thickness: 0, laminate_strength: 2 });
    expect(soft('clamp_force')).toBeCloseTo((Math.PI / 4) * (576 - 144) * 2, 6);
  });
});
