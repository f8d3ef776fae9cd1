import { record } from '../record.ts';

/** Straight distance between two points, mm. */
export const pinToPin = (x1: number, y1: number, z1: number, x2: number, y2: number, z2: number): number =>
  Math.sqrt((x2 - x1) ** 2 + (y2 - y1) ** 2 + (z2 - z1) ** 2);

export const pinToPinRecord = record({
  id: 'PIN_TO_PIN',
  title: 'Distance from pin to pin',
  arguments: [
    { name: 'x1', unit: 'mm', meaning: 'The first pin’s x' },
    { name: 'y1', unit: 'mm', meaning: 'The first pin’s y' },
    { name: 'z1', unit: 'mm', meaning: 'The first pin’s z' },
    { name: 'x2', unit: 'mm', meaning: 'The second pin’s x' },
    { name: 'y2', unit: 'mm', meaning: 'The second pin’s y' },
    { name: 'z2', unit: 'mm', meaning: 'The second pin’s z' },
  ],
  unit: 'mm',
  formula: 'square root of the sum of the squared differences',
  source: 'solid geometry',
  example: { given: [10, 20, 30, 12, 23, 36], answer: 7, tolerance: 1e-12, source: '4 + 9 + 36 = 49' },
  run: pinToPin,
});
