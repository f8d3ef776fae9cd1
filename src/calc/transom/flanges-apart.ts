import { type Argument, record } from '../record.ts';

/**
 * Separation of two flanges on the transom, mm, as rectangles seen from aft, heights not shortened by the rake. Where
 * they overlap both ways it is the lesser overlap, as a negative number.
 */
export function flangesApart(
  y1: number,
  z1: number,
  height1: number,
  width1: number,
  y2: number,
  z2: number,
  height2: number,
  width2: number,
): number {
  const aside = Math.abs(y2 - y1) - (width1 + width2) / 2;
  const above = Math.abs(z2 - z1) - (height1 + height2) / 2;
  if (aside <= 0 && above <= 0) return Math.max(aside, above);
  return Math.sqrt(Math.max(0, aside) ** 2 + Math.max(0, above) ** 2);
}

const flange = (which: string, n: number): readonly Argument[] => [
  { name: `y${n}`, unit: 'mm', meaning: `The ${which} flange's distance from the centreline` },
  { name: `z${n}`, unit: 'mm', meaning: `The ${which} flange's height on the transom` },
  { name: `height${n}`, unit: 'mm', meaning: `The ${which} flange's own height`, least: 0 },
  { name: `width${n}`, unit: 'mm', meaning: `The ${which} flange's own width`, least: 0 },
];

export const flangesApartRecord = record({
  id: 'FLANGES_APART',
  title: 'Between two flanges on the transom',
  arguments: [...flange('first', 1), ...flange('second', 2)],
  unit: 'mm',
  formula:
    'straight distance between two rectangles; where they overlap, the lesser overlap of sides and heights, negative',
  source: 'plane geometry',
  example: {
    given: [20, 250, 140, 200, 220, 400, 60, 120],
    answer: Math.hypot(40, 50),
    tolerance: 1e-12,
    source: 'by hand: 200 − 160 = 40 aside, 150 − 100 = 50 above',
  },
  run: flangesApart,
});
