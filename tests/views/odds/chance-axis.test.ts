import { expect, it } from 'vitest';
import { placeOf, TICKS } from '../../../src/views/odds/chance-axis.ts';

it('chances rise from left to right, the least at the left end, and none falls outside', () => {
  const places = TICKS.map(([chance]) => placeOf(chance));
  expect(places[0]).toBe(0);
  expect([...places].sort((a, b) => a - b)).toEqual(places);
  expect(new Set(places).size).toBe(places.length);
  for (const chance of [0, 1e-30, 1]) {
    expect(placeOf(chance)).toBeGreaterThanOrEqual(0);
    expect(placeOf(chance)).toBeLessThanOrEqual(1);
  }
});
