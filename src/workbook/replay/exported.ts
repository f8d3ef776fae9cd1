import { handedOut, PLACES, WHOLE } from '../../calc/limits/handed-out.ts';

/**
 * The scales by the binary exponent of a number: two powers of two lie within one power of ten, or in two, of which
 * the second holds where the first gives too many digits.
 */
const scales = new Float64Array(2048).fill(Number.NaN);
const nextScales = new Float64Array(2048).fill(Number.NaN);

/** A power of ten may come out a hair too small as a power of two is turned into it. */
const HAIR = 1e-12;

// The least exponent holds 0 and numbers with fewer digits, the greatest what is not finite, and the one before it
// numbers that might be rounded to infinite: all stay NaN here.
for (let exponent = 1; exponent < 2046; exponent++) {
  const power = Math.floor(Math.log10(2 ** (exponent - 1023) * (1 + HAIR)));
  scales[exponent] = 10 ** (PLACES - power);
  nextScales[exponent] = 10 ** (PLACES - power - 1);
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

const handedOutOrNot = (value: number): number => (value === value ? handedOut(value) : value);

/**
 * `handedOut` for a whole column, into another from `at` on. NaN stays NaN. The sums are written out: a loop that is
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
    let scale = scales[exponent] as number;
    if (size * scale >= MOST) scale = nextScales[exponent] as number;
    const digits = Math.floor(size * scale + 0.5);
    if (digits > LEAST && digits < MOST) to[at + i] = value < 0 ? -(digits / scale) : digits / scale;
    else to[at + i] = handedOutOrNot(value);
  }
}
