import fc from 'fast-check';
import { Line3, Vector3 } from 'three';
import { describe, expect, it } from 'vitest';
import { type Sector, sectorDistance } from '../../../src/calc/rudders/sector.ts';
import { within } from '../within.ts';

const RADIANS = Math.PI / 180;

interface Fan {
  readonly x: number;
  readonly y: number;
  readonly heading: number;
  readonly half: number;
  readonly r: number;
}

const fan = (half: fc.Arbitrary<number>): fc.Arbitrary<Fan> =>
  fc.record({
    x: within(-500, 500),
    y: within(-500, 500),
    heading: within(-180, 180),
    half,
    r: fc.oneof(fc.constant(0), within(1, 400)),
  });

const sectorOf = ({ x, y, heading, half, r }: Fan): Sector => ({
  x,
  y,
  ux: Math.cos(heading * RADIANS),
  uy: Math.sin(heading * RADIANS),
  c: Math.cos(half * RADIANS),
  s: Math.sin(half * RADIANS),
  r,
});

const anyFan = fan(fc.oneof(fc.constantFrom(0, 90), within(0, 90)));

/** A point of the fan, both shares from 0 to 1. */
const pointIn = ({ x, y, heading, half, r }: Fan, turned: number, out: number): readonly [number, number] => {
  const angle = (heading + half * (2 * turned - 1)) * RADIANS;
  return [x + r * out * Math.cos(angle), y + r * out * Math.sin(angle)];
};

describe('the distance of two sectors', { timeout: 30_000 }, () => {
  it('with no opening is the distance of two segments, as three has it', () => {
    // Line3.distanceSqToLine3 of three 0.187.0.
    const segment = fan(fc.constant(0));
    fc.assert(
      fc.property(segment, segment, (p, q) => {
        const line = (it: Fan) => {
          const [x, y] = pointIn(it, 0.5, 1);
          return new Line3(new Vector3(it.x, it.y, 0), new Vector3(x, y, 0));
        };
        const squared = line(p).distanceSqToLine3(line(q));
        // A squared distance of two crossing lines is only 0 to about 1e-10.
        expect(Math.abs(sectorDistance(sectorOf(p), sectorOf(q)) ** 2 - squared)).toBeLessThanOrEqual(
          1e-8 * (1 + squared),
        );
      }),
      { numRuns: 500 },
    );
  });

  it('gives the segments of the table: from (0, 0)-(10, 0), 3 above it and 3 beside its end', () => {
    // The table's three pairs, seen in the plane they lie in: distances² 9, 16 and (2, 1) past the end 5.
    const at = (x: number, y: number, heading: number, r: number) => sectorOf({ x, y, heading, half: 0, r });
    const base = at(0, 0, 0, 10);
    expect(sectorDistance(base, at(5, 3, 90, 10))).toBeCloseTo(3, 12);
    expect(sectorDistance(base, at(3, 4, 0, 10))).toBeCloseTo(4, 12);
    expect(sectorDistance(base, at(12, 1, 0, 8)) ** 2).toBeCloseTo(5, 12);
    expect(sectorDistance(base, at(5, -5, 90, 10))).toBe(0);
  });

  it('is the same from either side, and wherever the pair stands', () => {
    fc.assert(
      fc.property(anyFan, anyFan, within(-180, 180), (p, q, turn) => {
        const distance = sectorDistance(sectorOf(p), sectorOf(q));
        expect(Math.abs(sectorDistance(sectorOf(q), sectorOf(p)) - distance)).toBeLessThanOrEqual(1e-9);
        const [c, s] = [Math.cos(turn * RADIANS), Math.sin(turn * RADIANS)];
        const turned = (it: Fan): Fan => ({
          ...it,
          x: it.x * c - it.y * s + 70,
          y: it.x * s + it.y * c - 30,
          heading: it.heading + turn,
        });
        const moved = sectorDistance(sectorOf(turned(p)), sectorOf(turned(q)));
        // Edges that only just touch may or may not count as crossing once they are turned.
        expect(Math.abs(moved - distance)).toBeLessThanOrEqual(1e-6);
      }),
      { numRuns: 500 },
    );
  });

  it('is never above the distance of any two of their points', () => {
    const share = within(0, 1);
    fc.assert(
      fc.property(
        anyFan,
        anyFan,
        fc.array(fc.tuple(share, share, share, share), { minLength: 40 }),
        (p, q, draws) => {
          const distance = sectorDistance(sectorOf(p), sectorOf(q));
          for (const [a, b, c, d] of draws) {
            const [px, py] = pointIn(p, a, b);
            const [qx, qy] = pointIn(q, c, d);
            expect(Math.hypot(px - qx, py - qy)).toBeGreaterThanOrEqual(distance - 1e-9);
          }
        },
      ),
      { numRuns: 200 },
    );
  });

  it('does not grow when a sector opens or lengthens', () => {
    fc.assert(
      fc.property(anyFan, anyFan, within(0, 1), within(0, 200), (p, q, open, more) => {
        const distance = sectorDistance(sectorOf(p), sectorOf(q));
        const wider = { ...p, half: p.half + (90 - p.half) * open, r: p.r + more };
        expect(sectorDistance(sectorOf(wider), sectorOf(q))).toBeLessThanOrEqual(distance + 1e-9);
      }),
      { numRuns: 500 },
    );
  });
});
