import { describe, expect, it } from 'vitest';
import { oneFootBoltTensionRecord } from '../../../src/calc/fasteners/foot-bolts.ts';

describe('the bolts of a single strut’s foot', () => {
  it('are pulled by the moment whichever side of the foot its lever ends', () => {
    // By hand: 1000 N at |200 − 500 + 40| = 260 mm over ½·2·80 mm.
    expect(oneFootBoltTensionRecord.run(1000, 0, 0, 2, 80, 40, 200, -500)).toBeCloseTo((1000 * 260) / 80, 9);
  });
});
