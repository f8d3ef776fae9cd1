import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { handedOut } from '../../../src/calc/limits/handed-out.ts';
import { Engine } from '../../../src/workbook/engine.ts';
import { exportColumn, halvesOf } from '../../../src/workbook/replay/exported.ts';

function column(values: readonly number[]): Float64Array {
  const from = Float64Array.from(values);
  const to = new Float64Array(values.length + 1);
  exportColumn(from, halvesOf(from), to, 1, values.length);
  return to.slice(1);
}

/** Doubles on both sides of every power of ten and of two, and what lies beside the ends of the range. */
function* awkward(): Generator<number> {
  const bits = new DataView(new ArrayBuffer(8));
  for (const [base, least, most] of [
    [10, -323, 308],
    [2, -1074, 1023],
  ] as const) {
    for (let power = least; power <= most; power++) {
      bits.setFloat64(0, base ** power);
      const at = bits.getBigInt64(0);
      for (const step of [
        -9000n,
        -4000n,
        -1000n,
        -40n,
        -3n,
        -2n,
        -1n,
        0n,
        1n,
        2n,
        3n,
        40n,
        1000n,
        4000n,
        9000n,
      ]) {
        if (at + step < 0n) continue;
        bits.setBigInt64(0, at + step);
        yield bits.getFloat64(0);
      }
    }
  }
  // Halves of the last place kept, and what stands right beside them.
  for (let i = 0; i < 20_000; i++) {
    const whole = Math.floor(10 ** (14 + (i % 1000) / 1000)) + 0.5;
    bits.setFloat64(0, whole / 10 ** ((i % 25) - 5));
    const at = bits.getBigInt64(0);
    for (const step of [-2n, -1n, 0n, 1n, 2n]) {
      bits.setBigInt64(0, at + step);
      yield bits.getFloat64(0);
    }
  }
  yield* [0, Number.MAX_VALUE, Number.MIN_VALUE, 1 / 3, 0.1 + 0.2, 999_999_999_999_999.9];
}

describe('rounding of what is handed out', () => {
  it('of a column is that of each number, to the last bit', () => {
    const values = [...awkward()].flatMap((value) => [value, -value]);
    expect([...column(values)]).toEqual(values.map(handedOut));
    fc.assert(
      fc.property(
        fc.array(fc.double({ noNaN: true, noDefaultInfinity: true }), { minLength: 200 }),
        (drawn) => {
          expect([...column(drawn)].map((it) => it + 0)).toEqual(drawn.map((it) => handedOut(it) + 0));
        },
      ),
      { numRuns: 200 },
    );
  });

  it('is the engine’s', () => {
    const values = [...awkward()]
      .filter((_, i) => i % 29 === 0)
      .flatMap((value) => (value === 0 ? [0] : [value, -value]));
    const engine = new Engine(new Map(values.map((value, i) => [`cell_${i}`, value])), (name) => name);
    for (const [i, value] of values.entries()) {
      expect(engine.answer(`cell_${i}`).value).toBe(handedOut(value));
    }
    engine.destroy();
  });

  it('leaves what has no answer without one', () => {
    expect(column([Number.NaN, 1])).toEqual(Float64Array.of(Number.NaN, 1));
  });
});
