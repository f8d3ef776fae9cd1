import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inputNamed } from '../../../src/plan/book.ts';
import { refusal } from '../../../src/plan/bounds.ts';
import type { Value } from '../../../src/plan/plan.ts';
import { clash } from '../../../src/plan/relations.ts';
import type { InputCell } from '../../../src/plan/template.ts';
import { refusing } from '../../../src/session/studies/refusing.ts';

const STAY: Readonly<Record<string, Value>> = {
  tube_od: 60,
  tube_wall: 3,
  stock_diameter: 30,
  transom_camber_radius: 2500,
  shaft_offset: 0,
  port_foot_y: -300,
  strut_count: 2,
};

/** Ranges about the values that stay, some narrow and clear of every relation, some across them. */
const ranges = fc.record({
  names: fc.uniqueArray(fc.constantFrom(...Object.keys(STAY)), { minLength: 1, maxLength: 4 }),
  middles: fc.array(fc.constantFrom(0, 0.4, 0.9, 1, 1.1, 20), { minLength: 4, maxLength: 4 }),
  widths: fc.array(fc.constantFrom(0, 0.01, 0.5, 3), { minLength: 4, maxLength: 4 }),
  sides: fc.constantFrom(-1, 0),
  spread: fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 40, maxLength: 40 }),
});

describe('points that cannot be', () => {
  it('are those with an input past its bounds or a relation broken, however a batch is cleared', () => {
    let refusedSome = 0;
    let refusedNone = 0;
    fc.assert(
      fc.property(ranges, ({ names, middles, widths, sides, spread }) => {
        const count = 10;
        const columns = names.map((name, k) => {
          const value = STAY[name] as number;
          const isWhole = inputNamed(name)?.type === 'whole';
          return Float64Array.from({ length: count }, (_, i) => {
            const off = Math.max(sides, spread[10 * k + i] ?? 0);
            const at = value * (middles[k] as number) + 100 * (widths[k] as number) * off;
            return isWhole ? Math.round(at / 100) : at;
          });
        });
        const refused = new Uint8Array(count);
        const any = refusing(names, (name) => STAY[name] ?? null)(columns, count, refused);
        const expected = Array.from({ length: count }, (_, i) => {
          const at = new Map(names.map((name, k) => [name, columns[k]?.[i] as number]));
          const isOutside = names.some(
            (name) => refusal(inputNamed(name) as InputCell, at.get(name) ?? null) !== undefined,
          );
          const broken = clash((name) => at.get(name) ?? STAY[name] ?? null);
          return isOutside || broken?.names.some((name) => at.has(name)) === true ? 1 : 0;
        });
        expect([...refused]).toEqual(expected);
        expect(any).toBe(expected.includes(1));
        if (any) refusedSome++;
        else refusedNone++;
      }),
      { numRuns: 400, seed: 7 },
    );
    expect(Math.min(refusedSome, refusedNone)).toBeGreaterThan(20);
  });

  it('are found between a flat face and a camber that reaches far enough', () => {
    const refused = new Uint8Array(3);
    const radii = Float64Array.of(0, 40, 300);
    refusing(
      ['transom_camber_radius'],
      (name) => ({ ...STAY, shaft_offset: 50, port_foot_y: 0 })[name] ?? null,
    )([radii], 3, refused);
    expect([...refused]).toEqual([0, 1, 0]);
  });
});
