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

const signOf = (half: number): number => 1 - ((half >>> 30) & 2);

const scaleFor = (half: number, size: number): number => {
  const exponent = (half >>> 20) & 2047;
  return scales[2 * exponent + Number(size >= (boundaries[exponent] as number))] as number;
};

const isPlain = (digits: number): boolean => digits > LEAST && digits < MOST;

const exportedOrNot = (value: number): number => (value === value ? exported(value) : value);

/**
 * `exported` for a whole column, into another from `at` on, four numbers at a time and without a branch that they
 * decide. NaN stays NaN.
 */
export function exportColumn(
  from: Float64Array,
  halves: Uint32Array,
  to: Float64Array,
  at: number,
  count: number,
): void {
  const inFours = count - (count % 4);
  for (let i = 0; i < inFours; i += 4) {
    const half1 = halves[2 * i + UPPER] as number;
    const half2 = halves[2 * i + 2 + UPPER] as number;
    const half3 = halves[2 * i + 4 + UPPER] as number;
    const half4 = halves[2 * i + 6 + UPPER] as number;
    const size1 = Math.abs(from[i] as number);
    const size2 = Math.abs(from[i + 1] as number);
    const size3 = Math.abs(from[i + 2] as number);
    const size4 = Math.abs(from[i + 3] as number);
    const scale1 = scaleFor(half1, size1);
    const scale2 = scaleFor(half2, size2);
    const scale3 = scaleFor(half3, size3);
    const scale4 = scaleFor(half4, size4);
    const digits1 = Math.floor(size1 * scale1 + 0.5);
    const digits2 = Math.floor(size2 * scale2 + 0.5);
    const digits3 = Math.floor(size3 * scale3 + 0.5);
    const digits4 = Math.floor(size4 * scale4 + 0.5);
    to[at + i] = (digits1 / scale1) * signOf(half1);
    to[at + i + 1] = (digits2 / scale2) * signOf(half2);
    to[at + i + 2] = (digits3 / scale3) * signOf(half3);
    to[at + i + 3] = (digits4 / scale4) * signOf(half4);
    if (isPlain(digits1) && isPlain(digits2) && isPlain(digits3) && isPlain(digits4)) continue;
    for (let k = i; k < i + 4; k++) to[at + k] = exportedOrNot(from[k] as number);
  }
  for (let i = inFours; i < count; i++) {
    const half = halves[2 * i + UPPER] as number;
    const size = Math.abs(from[i] as number);
    const scale = scaleFor(half, size);
    const digits = Math.floor(size * scale + 0.5);
    to[at + i] = isPlain(digits) ? (digits / scale) * signOf(half) : exportedOrNot(from[i] as number);
  }
}
