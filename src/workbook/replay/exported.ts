import { OPTIONS } from '../engine-options.ts';

const PLACES = OPTIONS.precisionRounding;

const scaleOf = (size: number): number => 10 ** (PLACES - Math.floor(Math.log10(size)));

/** The engine's rounding of what it hands out, to so many places after the first digit. Tiny numbers give NaN, as there. */
export function exported(value: number): number {
  if (value === 0) return value;
  const scale = scaleOf(Math.abs(value));
  return value < 0 ? -Math.round(-value * scale) / scale : Math.round(value * scale) / scale;
}

/**
 * Beside a power of ten, within this share of it, the machine's logarithm is asked itself: it may come out as the
 * neighbour's.
 */
const MARGIN = 1e-12;

/**
 * The scales by the binary exponent of a number, two for each: between two powers of two stands at most one power of
 * ten, the boundary, from which on the second holds.
 */
const scales = new Float64Array(4096).fill(Number.NaN);
const boundaries = new Float64Array(2048).fill(Number.POSITIVE_INFINITY);
const margins = new Float64Array(2048).fill(-1);

// The least exponent holds 0 and numbers with fewer digits, the greatest what is not finite: both stay NaN here.
for (let exponent = 1; exponent < 2047; exponent++) {
  const least = 2 ** (exponent - 1023);
  const power = Math.floor(Math.log10(least * (1 + MARGIN)));
  const boundary = 10 ** (power + 1);
  scales[2 * exponent] = 10 ** (PLACES - power);
  scales[2 * exponent + 1] = 10 ** (PLACES - power - 1);
  if (boundary / least >= 2) continue;
  boundaries[exponent] = boundary;
  margins[exponent] = boundary * MARGIN;
}

/** Which half of a number's eight bytes holds its sign and exponent. */
const UPPER = new Uint8Array(new Uint16Array([1]).buffer)[0] === 1 ? 1 : 0;

/** A column's bytes seen as halves of numbers; it must stand alone in its buffer. */
export const halvesOf = (column: Float64Array): Uint32Array => new Uint32Array(column.buffer);

/**
 * `exported` for a whole column, into another from `at` on, without a branch that the numbers decide. NaN stays NaN.
 */
export function exportColumn(
  from: Float64Array,
  halves: Uint32Array,
  to: Float64Array,
  at: number,
  count: number,
): void {
  for (let i = 0; i < count; i++) {
    const value = from[i] as number;
    const half = halves[2 * i + UPPER] as number;
    const exponent = (half >>> 20) & 2047;
    const sign = 1 - ((half >>> 30) & 2);
    const size = Math.abs(value);
    const boundary = boundaries[exponent] as number;
    const scale = scales[2 * exponent + Number(size >= boundary)] as number;
    const rounded = (Math.floor(size * scale + 0.5) / scale) * sign;
    to[at + i] = rounded;
    const isBeside = Math.abs(size - boundary) <= (margins[exponent] as number);
    if (isBeside || (rounded !== rounded && value === value)) to[at + i] = exported(value);
  }
}
