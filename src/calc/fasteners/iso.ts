import { NoAnswer } from '../answer.ts';

/** Dimensions of one size of through bolt with its nut and washer, mm and mm². */
export interface BoltSize {
  readonly diameter: number;
  /** Coarse pitch, ISO 261. */
  readonly pitch: number;
  /** Greatest nut height, ISO 4032. */
  readonly nut: number;
  /** Greatest washer thickness and outer diameter, ISO 7089. */
  readonly washer: number;
  readonly washerDiameter: number;
  /** Stress area, nominal as tabulated, ISO 898-1. */
  readonly stressArea: number;
  /** Clearance hole of the medium series, ISO 273. */
  readonly hole: number;
}

const SIZES: readonly BoltSize[] = [
  { diameter: 6, pitch: 1, nut: 5.2, washer: 1.8, washerDiameter: 12, stressArea: 20.1, hole: 6.6 },
  { diameter: 8, pitch: 1.25, nut: 6.8, washer: 1.8, washerDiameter: 16, stressArea: 36.6, hole: 9 },
  { diameter: 10, pitch: 1.5, nut: 8.4, washer: 2.2, washerDiameter: 20, stressArea: 58.0, hole: 11 },
  { diameter: 12, pitch: 1.75, nut: 10.8, washer: 2.7, washerDiameter: 24, stressArea: 84.3, hole: 13.5 },
];

/** ISO 888 lengths without brackets, mm. Those below 20 and above 200 are from memory. */
export const BOLT_LENGTHS: readonly number[] = [
  6, 8, 10, 12, 16, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 80, 90, 100, 110, 120, 130, 140, 150, 160,
  180, 200, 220, 240, 260, 280, 300, 320, 340, 360, 380, 400, 420, 440, 460, 480, 500,
];

/** Diameter of the thread's core: d − 1.22687 × pitch (ISO 724). */
export const coreDiameter = (size: BoltSize): number => size.diameter - 1.22687 * size.pitch;

export function boltSize(diameter: number): BoltSize | NoAnswer {
  return (
    SIZES.find((size) => size.diameter === diameter) ??
    new NoAnswer(`A through bolt of ${diameter} mm is not in the tables; 6, 8, 10 and 12 are.`)
  );
}

export const diameterArgument = {
  name: 'diameter',
  unit: 'mm',
  meaning: "The bolt's diameter",
  above: 0,
} as const;
