import { describe, expect, it } from 'vitest';
import { fitQuestion } from '../../src/fitting/fit-tolerance.ts';
import { inputNamed } from '../../src/plan/book.ts';
import type { InputName } from '../../src/plan/names.ts';

const asked = (name: InputName, planned: number, read: number): string | undefined => {
  const cell = inputNamed(name);
  if (cell === undefined) throw new Error(`There is no input ${name}.`);
  return fitQuestion(cell, planned, read, 'mm');
};

describe('a reading as fitted that is unlike the plan', () => {
  it('is asked about beyond five times what it may be off, and not on that bound', () => {
    // A drilled hole may be off by 2 mm.
    expect(asked('upper_bracket_height', 800, 810)).toBeUndefined();
    expect(asked('upper_bracket_height', 800, 810.1)).toContain('10.1 mm more than the 800 mm planned');
    expect(asked('upper_bracket_height', 800, 789)).toContain('11 mm less');
    expect(asked('transom_thickness', 18, 21)).toBeUndefined();
    expect(asked('transom_thickness', 18, 21.5)).toContain('3.5 mm more');
    expect(asked('shaft_lean', 0, 0.5)).toBeUndefined();
    expect(asked('shaft_lean', 0, 0.6)).toContain('0.6° more');
    expect(asked('shim_count', 4, 5)).toBeDefined();
    expect(asked('shim_count', 4, 4)).toBeUndefined();
  });

  it('is asked about whenever its sign is the other one', () => {
    expect(asked('port_foot_y', -170, 170)).toContain('the other sign');
    expect(asked('shaft_offset', 2, -1)).toContain('the other sign');
    expect(asked('shaft_offset', 0, -1)).toBeUndefined();
  });
});
