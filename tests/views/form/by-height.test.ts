import { describe, expect, it } from 'vitest';
import { inputs } from '../../../src/plan/book.ts';
import { byHeight } from '../../../src/views/form/by-height.ts';

const choices = inputs.filter((cell) => cell.kind === 'choice');

describe('choices by height', () => {
  it('put the upper bracket on top and the foot of the shaft below all other parts', () => {
    const names = byHeight(choices).map((cell) => cell.name);
    expect(names[0]).toBe('upper_bracket_height');
    expect(names.indexOf('shaft_foot_height')).toBeGreaterThan(names.indexOf('lower_bracket_height'));
    expect(names.indexOf('shaft_foot_height')).toBeGreaterThan(names.indexOf('shim_count'));
  });

  it('lose none and leave others in the order of the workbook', () => {
    expect(new Set(byHeight(choices))).toEqual(new Set(choices));
    const readings = inputs.filter((cell) => cell.kind === 'input');
    expect(byHeight(readings)).toEqual(readings);
  });
});
