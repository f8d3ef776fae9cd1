import { record } from '../record.ts';

/** Epoxy that beds so many backing plates, cm³. */
export const bedVolume = (area: number, gap: number, count: number, waste: number): number =>
  (area * gap * count * (1 + waste)) / 1000;

export const bedVolumeRecord = record({
  id: 'BED_VOLUME',
  title: 'Epoxy under the backing plates',
  arguments: [
    { name: 'area', unit: 'mm²', meaning: 'The area of one bed', least: 0 },
    { name: 'gap', unit: 'mm', meaning: "The bed's mean thickness", least: 0 },
    { name: 'count', unit: '–', meaning: 'How many beds', least: 0 },
    { name: 'waste', unit: '–', meaning: 'What stays in pot and on tools, as a share', least: 0 },
  ],
  unit: 'cm³',
  formula: 'area × mean thickness × count × (1 + waste)',
  source: 'plane geometry; 1 cm³ = 1000 mm³',
  example: {
    given: [10000, 3, 6, 0.25],
    answer: 225,
    tolerance: 1e-9,
    source: 'by hand: 100 cm² × 0.3 cm × 6 = 180 cm³, and a quarter more',
  },
  run: bedVolume,
});
