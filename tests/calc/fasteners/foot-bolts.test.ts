import { describe, expect, it } from 'vitest';
import { NoAnswer } from '../../../src/calc/answer.ts';
import { oneFootBoltTensionRecord } from '../../../src/calc/fasteners/foot-bolts.ts';

// Reaction 1000 N sideways alone; two bolts 80 mm apart in a foot 60 high, its pin 40 mm off an upright face.
const foot = [1000, 0, 0, 2, 80, 60, 40, 0, 0, 0] as const;

describe('the bolts of a single strut’s foot', () => {
  it('are pulled by the moment whichever side of the foot its lever ends', () => {
    // By hand: 1000 N at 260 mm over ½·2·80 mm, the axis aft of the foot or ahead of it.
    const at = (axisX: number) =>
      oneFootBoltTensionRecord.run(...foot, 40, 0, 500, axisX, axisX - 45, 0, 500);
    expect(at(260)).toBeCloseTo((1000 * 260) / 80, 9);
    expect(at(-260)).toBeCloseTo((1000 * 260) / 80, 9);
  });

  it('have no answer for a strut that runs straight across the boat', () => {
    expect(oneFootBoltTensionRecord.run(...foot, 40, 0, 500, 85, 40, 0, 500)).toBeInstanceOf(NoAnswer);
  });
});
