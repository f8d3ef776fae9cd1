import { OPTIONS } from '../engine-options.ts';

const PLACES = OPTIONS.precisionRounding;

/** The engine's rounding of what it hands out, to so many places after the first digit. Tiny numbers give NaN, as there. */
export function exported(value: number): number {
  if (value === 0) return value;
  const scale = 10 ** (PLACES - Math.floor(Math.log10(Math.abs(value))));
  return value < 0 ? -Math.round(-value * scale) / scale : Math.round(value * scale) / scale;
}

/** Digits beside a power of ten for which its logarithm might come out as its neighbour's. */
const MARGIN = 1e-12;

/**
 * `exported` for a whole column of like numbers: the scale is worked out again only when the size of the numbers
 * changes. NaN stays NaN.
 */
export function exportColumn(from: Float64Array, to: Float64Array, count: number): void {
  let low = 1;
  let high = 0;
  let scale = 1;
  for (let i = 0; i < count; i++) {
    const value = from[i] as number;
    const size = Math.abs(value);
    if (!(size >= low && size < high)) {
      if (value === 0 || value !== value) {
        to[i] = value;
        continue;
      }
      const power = Math.floor(Math.log10(size));
      scale = 10 ** (PLACES - power);
      low = 10 ** power * (1 + MARGIN);
      high = 10 ** (power + 1) * (1 - MARGIN);
    }
    to[i] = value < 0 ? -Math.round(-value * scale) / scale : Math.round(value * scale) / scale;
  }
}
