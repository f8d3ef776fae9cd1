import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bottomBearingForce,
  lowerReaction,
  topBearingForce,
  upperReaction,
} from '../../../src/calc/loads/reactions.ts';
import { tubeBendingShare } from '../../../src/calc/section/bending-share.ts';
import { within } from '../within.ts';

// AISC Manual Table 3-23, beam overhanging one support with a load at the overhang's end (case number from memory);
// the same by superposition in Roark, 8th ed., Table 8.1 (from memory): R_A = P·a/L holds down, R_B = P·(L + a)/L.
describe('a beam on two supports with a load past one of them', () => {
  const close = (answer: number, expected: number) =>
    expect(Math.abs(answer / expected - 1)).toBeLessThanOrEqual(1e-6);

  it('holds 50 kip at 48 in past a span of 180 in', () => {
    // Mechanics of Materials (McGraw-Hill), Sample Problem 9.1: numbers from memory, reactions from the closed formula.
    close(lowerReaction(50_000, 40, 8, 180), 63_333 + 1 / 3);
    close(upperReaction(50_000, 40, 8, 180), 13_333 + 1 / 3);
    close(bottomBearingForce(50_000, 48, 180), 63_333 + 1 / 3);
    close(topBearingForce(50_000, 48, 180), 13_333 + 1 / 3);
  });

  it('holds 1000 N at 900 mm past a span of 600 mm, with the stress of 900 N·m in a tube 60.3 × 3.91', () => {
    // Closed formula: R_A 1500 N, R_B 2500 N, stress 98.0853 MPa as printed, half its last digit allowed.
    close(lowerReaction(1000, 750, 150, 600), 2500);
    close(upperReaction(1000, 750, 150, 600), 1500);
    close(bottomBearingForce(1000, 900, 600), 2500);
    close(topBearingForce(1000, 900, 600), 1500);
    expect(Math.abs(tubeBendingShare(900, 60.3, 3.91, 1) - 98.0853)).toBeLessThanOrEqual(5e-5);
  });

  it('is in balance: forces cancel, and so do moments about any height', () => {
    const length = within(1, 3000);
    fc.assert(
      fc.property(length, length, length, length, (force, rudderArm, lowerArm, spacing) => {
        const lower = lowerReaction(force, rudderArm, lowerArm, spacing);
        const upper = upperReaction(force, rudderArm, lowerArm, spacing);
        expect(Math.abs(force - lower + upper)).toBeLessThanOrEqual(1e-9 * lower);
        const aboutBearing = force * rudderArm + lower * lowerArm - upper * (lowerArm + spacing);
        expect(Math.abs(aboutBearing)).toBeLessThanOrEqual(1e-9 * upper * (lowerArm + spacing));
      }),
    );
  });
});
