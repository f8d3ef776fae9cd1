/** An inch bolt of the coarse series, as sold beside a metric size. Inches but for the stress area. */
export interface InchBolt {
  readonly name: string;
  readonly diameter: number;
  readonly threads: number;
  /** Hex nut, ASME B18.2.2, and thickest narrow washer, ASME B18.21.1. From memory. */
  readonly nut: number;
  readonly washer: number;
  /** Close hole, ASME B18.2.8, as a fraction. From memory. */
  readonly hole: string;
}

const SIZES: readonly InchBolt[] = [
  { name: '1⁄4-20', diameter: 1 / 4, threads: 20, nut: 7 / 32, washer: 0.08, hole: '17⁄64' },
  { name: '5⁄16-18', diameter: 5 / 16, threads: 18, nut: 17 / 64, washer: 0.08, hole: '21⁄64' },
  { name: '3⁄8-16', diameter: 3 / 8, threads: 16, nut: 21 / 64, washer: 0.08, hole: '25⁄64' },
  { name: '1⁄2-13', diameter: 1 / 2, threads: 13, nut: 7 / 16, washer: 0.121, hole: '33⁄64' },
];

const MM = 25.4;

/** The size of the coarse series nearest to a metric diameter. */
export function nearestUnc(diameter: number): InchBolt {
  const far = (it: InchBolt): number => Math.abs(it.diameter * MM - diameter);
  return SIZES.reduce((best, it) => (far(it) < far(best) ? it : best));
}

/** Stress area, mm²: π/4 × (d − 0.9743/n)², ASME B1.1. */
export const uncStressArea = ({ diameter, threads }: InchBolt): number =>
  (Math.PI / 4) * (diameter - 0.9743 / threads) ** 2 * MM * MM;

/** Lengths sold: by quarters of an inch to 4, by halves to 6, by whole inches to 12. From memory. */
const stepAt = (length: number): number => (length <= 4 ? 0.25 : length <= 6 ? 0.5 : 1);
const LONGEST = 12;

/** Shortest length sold, inches, that takes a grip in mm, two washers, the nut and two threads; undefined past 12 in. */
export function uncLength(grip: number, { washer, nut, threads }: InchBolt): number | undefined {
  const reach = grip / MM + 2 * washer + nut + 2 / threads;
  for (const limit of [4, 6, LONGEST]) {
    const step = stepAt(limit);
    const length = Math.max(0.5, Math.ceil(reach / step - 1e-9) * step);
    if (length <= limit) return length;
  }
  return undefined;
}
