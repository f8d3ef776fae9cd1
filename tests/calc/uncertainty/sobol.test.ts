import { describe, expect, it } from 'vitest';
import { directionNumbers } from '../../../src/calc/uncertainty/direction-numbers.ts';
import { primitives } from '../../../src/calc/uncertainty/primitive.ts';
import { sobolPoints } from '../../../src/calc/uncertainty/sobol.ts';

const at = (column: Float64Array | undefined, n: number): number => column?.[n] ?? Number.NaN;

describe('primitive polynomials over two', () => {
  it('are as many as Euler’s function over the degree says', () => {
    // φ(2^d − 1)/d: 1, 1, 2, 2, 6, 6, 18, 16, 48 for degrees 1 to 9.
    const counts = new Map<number, number>();
    for (const { degree } of primitives()) {
      if (degree > 9) break;
      counts.set(degree, (counts.get(degree) ?? 0) + 1);
    }
    expect([...counts.values()]).toEqual([1, 1, 2, 2, 6, 6, 18, 16, 48]);
  });

  it('of degree 5 are the six that handbooks list', () => {
    // 45, 75, 67, 57, 73 and 51 octal, in every table of linear feedback registers.
    const found: number[] = [];
    for (const { degree, bits } of primitives()) {
      if (degree === 5) found.push(bits);
      if (degree > 5) break;
    }
    expect(found.sort((a, b) => a - b)).toEqual([0o45, 0o51, 0o57, 0o67, 0o73, 0o75]);
  });
});

describe('direction numbers', () => {
  it('begin as worked by hand from the recurrence', () => {
    // x + 1: each number is the one before it, halved, on top of it: 1/2, 3/4, 5/8, 15/16.
    const [, second] = directionNumbers(2);
    expect(Array.from(second?.slice(0, 4) ?? [], (it) => it / 2 ** 32)).toEqual([
      1 / 2,
      3 / 4,
      5 / 8,
      15 / 16,
    ]);
  });
});

describe('scrambled points', () => {
  it('fill every slice of every dimension once', () => {
    const count = 1024;
    for (const [d, column] of sobolPoints(130, count, 7).entries()) {
      const slices = new Set(Array.from(column, (it) => Math.floor(it * count)));
      expect([d, slices.size]).toEqual([d, count]);
    }
  });

  it('fill every elementary box of the first two dimensions once', () => {
    const count = 256;
    for (let seed = 0; seed < 5; seed++) {
      const [x, y] = sobolPoints(2, count, seed);
      for (let across = 1; across <= count; across *= 2) {
        const boxes = new Set(
          Array.from({ length: count }, (_, n) => {
            const column = Math.floor(at(x, n) * across);
            return column * count + Math.floor((at(y, n) * count) / across);
          }),
        );
        expect(boxes.size).toBe(count);
      }
    }
  });

  it('are the same for the same seed and others for another', () => {
    expect(sobolPoints(3, 16, 5)).toEqual(sobolPoints(3, 16, 5));
    expect(at(sobolPoints(3, 16, 5)[0], 0)).not.toBe(at(sobolPoints(3, 16, 6)[0], 0));
  });

  it('find the mean of a smooth sum far better than chance would', () => {
    // ∏(1 + (u − ½)/(j + 1)) has the mean 1 exactly.
    const count = 4096;
    const columns = sobolPoints(12, count, 3);
    let sum = 0;
    for (let n = 0; n < count; n++) {
      sum += columns.reduce((all, column, j) => all * (1 + (at(column, n) - 0.5) / (j + 1)), 1);
    }
    // By chance the standard error would be about 0.006.
    expect(Math.abs(sum / count - 1)).toBeLessThan(3e-4);
  });
});
