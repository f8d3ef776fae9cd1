import { describe, expect, it } from 'vitest';
import { overhangDeflection } from '../../../src/calc/section/overhang-deflection.ts';
import { tubeSection } from '../../../src/calc/section/tube.ts';

describe('the end of an overhang', () => {
  it('gives way as AISC Manual, Table 3-23, has it (case from memory)', () => {
    // W14×68 of a textbook's overhanging beam, in kip and inch: 50 kip at 48 in beyond a span of 180 in.
    expect(overhangDeflection(50_000, 48, 180, 29e6, 722)).toBeCloseTo(0.418149, 5);
  });

  it('gives way as a tube of 60.3 × 3.91 does, by the same table', () => {
    const { secondMoment } = tubeSection(60.3, 3.91);
    expect(overhangDeflection(1000, 900, 600, 200_000, secondMoment)).toBeCloseTo(7.319798, 5);
  });
});
