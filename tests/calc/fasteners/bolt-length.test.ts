import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { NoAnswer } from '../../../src/calc/answer.ts';
import { boltLength, boltReach } from '../../../src/calc/fasteners/bolt-length.ts';
import { BOLT_LENGTHS } from '../../../src/calc/fasteners/iso.ts';
import { within } from '../within.ts';

describe('the length of a through bolt', () => {
  // Shigley's Mechanical Engineering Design, 9th ed., Example 8-7, pp. 457-458: M16 through a grip of 25 mm with a
  // washer of about 2, a nut of 14.8 and two threads of 2 mm. The book leaves its washer out of the sum (43.8) and picks
  // 46 mm, no length of ISO 888; with the washer the sum is 45.8, and the next standard length is 50.
  it('goes two threads past the nut, as in the book, and then to the next ISO 888 length', () => {
    expect(BOLT_LENGTHS).not.toContain(46);
    expect(BOLT_LENGTHS.find((length) => length >= 25 + 2 + 14.8 + 2 * 2)).toBe(50);
    // The same rule here, with a washer at each end: M12 of ISO 7089, 4032 and 261.
    expect(boltReach(25, 12)).toBeCloseTo(25 + 2 * 2.7 + 10.8 + 2 * 1.75, 12);
    expect(boltLength(25, 12)).toBe(45);
  });

  // What is added to the grip, by hand from the rows of ISO 7089, 4032 and 261.
  it.each([
    [6, 10.8],
    [8, 12.9],
    [10, 15.8],
    [12, 19.7],
  ])('M%d: a reach that is exactly a standard length takes it, a hair more the next', (diameter, added) => {
    expect(boltLength(60 - added, diameter)).toBe(60);
    expect(boltLength(60 - added + 1e-10, diameter)).toBe(60);
    expect(boltLength(60 - added + 1e-6, diameter)).toBe(65);
  });

  it('skips the lengths in brackets: a reach of 71 takes 80', () => {
    expect(boltLength(71 - 19.7, 12)).toBe(80);
  });

  it('ends at 500 mm, where threaded rod serves', () => {
    expect(boltLength(500 - 19.7, 12)).toBe(500);
    const beyond = boltLength(500 - 19.6, 12);
    expect(beyond).toBeInstanceOf(NoAnswer);
    expect((beyond as NoAnswer).why).toContain('threaded rod');
  });

  it('is the shortest standard length that reaches', () => {
    fc.assert(
      fc.property(within(0, 470), fc.constantFrom(6, 8, 10, 12), (grip, diameter) => {
        const reach = boltReach(grip, diameter) as number;
        const length = boltLength(grip, diameter) as number;
        expect(length).toBeGreaterThanOrEqual(reach - 1e-9);
        const shorter = BOLT_LENGTHS[BOLT_LENGTHS.indexOf(length) - 1];
        if (shorter !== undefined) expect(shorter).toBeLessThan(reach);
      }),
    );
  });
});
