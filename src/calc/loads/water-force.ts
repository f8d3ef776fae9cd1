import { record } from '../record.ts';

/** Metres a second in one knot: 1852 m an hour, exactly. */
const KNOT = 1852 / 3600;

/** Force of flowing water on a blade, N: ½·density·speed²·area·coefficient, with chord and span in mm, speed in knots. */
export const waterForce = (
  density: number,
  speed: number,
  chord: number,
  span: number,
  coefficient: number,
): number => 0.5 * density * (speed * KNOT) ** 2 * chord * span * 1e-6 * coefficient;

export const waterForceRecord = record({
  id: 'WATER_FORCE',
  title: 'Force of flowing water on a blade',
  arguments: [
    { name: 'density', unit: 'kg/m³', meaning: "The water's density", least: 0 },
    { name: 'speed', unit: 'kn', meaning: "The boat's speed", least: 0 },
    { name: 'chord', unit: 'mm', meaning: "The blade's chord", least: 0 },
    { name: 'span', unit: 'mm', meaning: "The blade's span", least: 0 },
    { name: 'coefficient', unit: '–', meaning: 'The lift coefficient' },
  ],
  unit: 'N',
  formula: '½ × density × speed² × chord × span × coefficient, 1 knot being 1852 m an hour',
  source: 'dynamic pressure; knot from the BIPM SI Brochure, 8th ed., Table 8 (from memory)',
  example: {
    given: [1026.021, 10, 400, 900, 1.2],
    answer: 13576.981219 * 0.432,
    tolerance: 1e-4,
    source: 'dynamic pressure at 10 kn in sea water of 15 °C, ITTC 7.5-02-01-03, on 0.36 m² × 1.2',
  },
  run: waterForce,
});
