import { OPTIONS } from '../engine-options.ts';

const PLACES = OPTIONS.precisionRounding;

const WHOLE = 10 ** PLACES;

const scaleOf = (size: number): number => 10 ** (PLACES - Math.floor(Math.log10(size)));

/** The engine's rounding of what it hands out, to so many places after the first digit. Tiny numbers give NaN, as there. */
export function exported(value: number): number {
  // Such numbers have no more digits than are kept.
  if (Math.abs(value) < WHOLE && Number.isInteger(value)) return value;
  const scale = scaleOf(Math.abs(value));
  return value < 0 ? -Math.round(-value * scale) / scale : Math.round(value * scale) / scale;
}

/**
 * The scales by the binary exponent of a number, two for each: between two powers of two stands at most one power of
 * ten, the boundary, from which on the second holds.
 */
const scales = new Float64Array(4096).fill(Number.NaN);
const boundaries = new Float64Array(2048).fill(Number.POSITIVE_INFINITY);

/** A power of ten may come out a hair too small as a power of two is turned into it. */
const HAIR = 1e-12;

// The least exponent holds 0 and numbers with fewer digits, the greatest what is not finite: both stay NaN here.
for (let exponent = 1; exponent < 2047; exponent++) {
  const least = 2 ** (exponent - 1023);
  const power = Math.floor(Math.log10(least * (1 + HAIR)));
  const boundary = 10 ** (power + 1);
  scales[2 * exponent] = 10 ** (PLACES - power);
  scales[2 * exponent + 1] = 10 ** (PLACES - power - 1);
  if (boundary / least < 2) boundaries[exponent] = boundary;
}

/**
 * A number scaled to so many digits lies between these two. Near the ends the machine's logarithm is asked itself: it
 * may come out as the neighbour's.
 */
const LEAST = WHOLE * (1 + 2 * HAIR);
const MOST = 10 * WHOLE * (1 - 2 * HAIR);

/** Which half of a number's eight bytes holds its sign and exponent. */
const UPPER = new Uint8Array(new Uint16Array([1]).buffer)[0] === 1 ? 1 : 0;

/** A column's bytes seen as halves of numbers; it must stand alone in its buffer. */
export const halvesOf = (column: Float64Array): Uint32Array => new Uint32Array(column.buffer);

const exportedOrNot = (value: number): number => (value === value ? exported(value) : value);

/**
 * `exported` for a whole column, into another from `at` on. NaN stays NaN. The sums are written out: a loop that is
 * compiled before the functions it calls are known to be hot goes on calling them for good, which takes five times as
 * long.
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
    const size = Math.abs(value);
    const exponent = ((halves[2 * i + UPPER] as number) >>> 20) & 2047;
    const isHigh = size >= (boundaries[exponent] as number);
    const scale = scales[2 * exponent + Number(isHigh)] as number;
    const digits = Math.floor(size * scale + 0.5);
    if (digits > LEAST && digits < MOST) to[at + i] = value < 0 ? -(digits / scale) : digits / scale;
    else to[at + i] = exportedOrNot(value);
  }
}
