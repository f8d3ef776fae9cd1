import { describe, expect, it } from 'vitest';
import { inputNamed } from '../../../src/plan/book.ts';
import type { InputCell } from '../../../src/plan/template.ts';
import { settled, stepped } from '../../../src/views/parts/step.ts';

const cell = (name: string): InputCell => {
  const found = inputNamed(name);
  if (found === undefined) throw new Error(`There is no input named ${name}.`);
  return found;
};

describe('steps of a choice', () => {
  it('go by mm, and by parts of an inch where inches are shown', () => {
    expect(stepped(cell('upper_bracket_height'), 800, 1, 'both')).toBe(805);
    expect(stepped(cell('shim_thickness'), 12, 1, 'in')).toBeCloseTo(12.7, 12);
    expect(stepped(cell('shim_count'), 4, 1, 'in')).toBe(5);
  });

  it('stop at the bounds', () => {
    expect(stepped(cell('strut_count'), 2, 1, 'mm')).toBe(2);
    expect(stepped(cell('shim_count'), 0, -1, 'mm')).toBe(0);
    expect(stepped(cell('tube_wall'), 0.1, -1, 'mm')).toBe(0.1);
  });

  it('go through listed sizes in their order', () => {
    expect(stepped(cell('bolt_diameter'), 8, 1, 'mm')).toBe(10);
    expect(stepped(cell('bolt_diameter'), 12, 1, 'mm')).toBe(12);
    expect(stepped(cell('bolt_diameter'), 9, -1, 'mm')).toBe(8);
  });
});

describe('where a slider settles', () => {
  it('is the nearest step', () => {
    expect(settled(cell('upper_bracket_height'), 802.4, 'mm')).toBe(800);
    expect(settled(cell('upper_bracket_height'), 802.6, 'mm')).toBe(805);
    expect(settled(cell('port_foot_y'), -171, 'mm')).toBe(-170);
    expect(settled(cell('shim_count'), 3.6, 'mm')).toBe(4);
    expect(settled(cell('shim_count'), 4, 'mm')).toBe(4);
    expect(settled(cell('shaft_lean'), 0.2, 'mm')).toBe(0.2);
  });

  it('stays inside the bounds', () => {
    expect(settled(cell('strut_count'), 2.4, 'mm')).toBe(2);
    expect(settled(cell('immersion_min'), 1, 'mm')).toBe(1);
  });
});
