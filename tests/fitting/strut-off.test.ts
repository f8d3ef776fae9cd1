import { describe, expect, it } from 'vitest';
import { lengthsOff } from '../../src/fitting/strut-off.ts';

describe('lengthsOff', () => {
  const readings = [
    { name: 'a', value: 3, offBy: 0.03 },
    { name: 'b', value: 4, offBy: 0.04 },
  ];
  const at = (over: ReadonlyMap<string, number>) => [Math.hypot(over.get('a') ?? 3, over.get('b') ?? 4)];

  it('combines slopes of the hypotenuse of a 3-4-5 triangle, worked by hand', () => {
    // Slopes 3/5 and 4/5; u = off_by/√3 each (JCGM 100:2008, 4.3.7), combined by 5.1.2, k = 2.
    const [found] = lengthsOff(readings, at);
    const u = Math.sqrt((0.6 * 0.03) ** 2 + (0.8 * 0.04) ** 2) / Math.sqrt(3);
    expect(found?.value).toBe(5);
    expect(found?.give).toBeCloseTo(2 * u, 5);
    expect(found?.most).toBeCloseTo(0.6 * 0.03 + 0.8 * 0.04, 5);
    expect(found?.long).toBe(1);
  });

  it('takes a normal reading by its deviation', () => {
    const [found] = lengthsOff([{ name: 'a', value: 3, offBy: 0.03, normal: true }], at);
    expect(found?.give).toBeCloseTo(2 * 0.6 * 0.03, 5);
    expect(found?.most).toBeCloseTo(2 * 0.6 * 0.03, 5);
  });

  it('has no answer where the length has none, and nothing to add where nothing is off', () => {
    expect(lengthsOff(readings, () => [undefined])).toEqual([undefined]);
    expect(lengthsOff([{ name: 'a', value: 3, offBy: 0 }], at)[0]).toEqual({
      value: 5,
      give: 0,
      most: 0,
      long: 0,
    });
  });
});
