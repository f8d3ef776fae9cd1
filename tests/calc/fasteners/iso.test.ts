import { describe, expect, it } from 'vitest';
import { NoAnswer } from '../../../src/calc/answer.ts';
import { boltShare } from '../../../src/calc/fasteners/bolt-share.ts';
import { BOLT_LENGTHS, type BoltSize, boltSize, coreDiameter } from '../../../src/calc/fasteners/iso.ts';

const sizeOf = (diameter: number): BoltSize => {
  const size = boltSize(diameter);
  if (size instanceof NoAnswer) throw new Error(size.why);
  return size;
};

describe('the tables of through bolts', () => {
  it.each([
    { diameter: 6, pitch: 1, nut: 5.2, washer: 1.8, washerDiameter: 12, stressArea: 20.1, hole: 6.6 },
    { diameter: 8, pitch: 1.25, nut: 6.8, washer: 1.8, washerDiameter: 16, stressArea: 36.6, hole: 9 },
    { diameter: 10, pitch: 1.5, nut: 8.4, washer: 2.2, washerDiameter: 20, stressArea: 58.0, hole: 11 },
    { diameter: 12, pitch: 1.75, nut: 10.8, washer: 2.7, washerDiameter: 24, stressArea: 84.3, hole: 13.5 },
  ])('M$diameter: ISO 261 pitch, ISO 4032 m max, ISO 7089 h max and d2, ISO 898-1 area, ISO 273', (row) => {
    expect(boltSize(row.diameter)).toEqual(row);
  });

  // ISO 724: d2 = d − 0.64952 P, as tabulated. ISO 898-1: As = π/4·((d2 + d3)/2)², here to two decimals.
  it.each([
    [6, 5.35, 20.12],
    [8, 7.188, 36.61],
    [10, 9.026, 57.99],
    [12, 10.863, 84.27],
  ])('M%d: the thread core gives the stress area of ISO 898-1', (diameter, pitchDiameter, area) => {
    const size = sizeOf(diameter);
    const mean = (pitchDiameter + coreDiameter(size)) / 2;
    expect(Math.abs((Math.PI / 4) * mean * mean - area)).toBeLessThanOrEqual(0.01);
    expect(Math.abs(size.stressArea - area)).toBeLessThanOrEqual(0.05);
  });

  // ISO 898-1, least ultimate loads in N, printed to three figures.
  it.each([
    [6, 16_100, 24_500],
    [8, 29_200, 44_600],
    [10, 46_400, 70_800],
    [12, 67_400, 103_000],
  ])('M%d: a bolt of class 8.8 or 12.9 bears its ultimate load of ISO 898-1', (diameter, of88, of129) => {
    for (const [strength, load] of [
      [800, of88],
      [1220, of129],
    ] as const) {
      const share = boltShare(diameter, strength, 1, 0);
      if (share instanceof NoAnswer) throw new Error(share.why);
      expect(Math.abs(share(load, 0) - 1)).toBeLessThanOrEqual(0.004);
    }
  });

  it('has the lengths of ISO 888 up to 200 mm without those in brackets', () => {
    expect(BOLT_LENGTHS.filter((length) => length >= 20 && length <= 200)).toEqual([
      20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 80, 90, 100, 110, 120, 130, 140, 150, 160, 180, 200,
    ]);
    for (const bracketed of [75, 85, 95]) expect(BOLT_LENGTHS).not.toContain(bracketed);
  });

  it('goes on in steps of 20 to 500 mm (from memory)', () => {
    const long = BOLT_LENGTHS.filter((length) => length >= 200);
    expect(long.at(-1)).toBe(500);
    for (let i = 1; i < long.length; i++) expect((long[i] as number) - (long[i - 1] as number)).toBe(20);
  });

  it('knows no other sizes', () => {
    for (const diameter of [5, 7, 11, 16]) {
      const size = boltSize(diameter);
      expect(size).toBeInstanceOf(NoAnswer);
      expect((size as NoAnswer).why).toContain(`${diameter} mm`);
    }
  });
});
