import { describe, expect, it } from 'vitest';
import { finish } from '../../../src/studies/study.ts';
import { type TurningAsk, turning } from '../../../src/studies/turning.ts';
import { type PlainPointLimit, plainPoints } from '../plain-points.ts';

const found = (limit: Omit<PlainPointLimit, 'name'>, over: Partial<TurningAsk> = {}) => {
  const all = finish(
    turning(plainPoints([{ name: 'room', ...limit }]), {
      scenario: null,
      input: 'x',
      low: 0,
      high: 10,
      whole: false,
      present: 5,
      ...over,
    }),
  );
  const [only] = all.limits;
  if (only === undefined) throw new Error('no limit');
  return { ...only, evaluations: all.evaluations };
};

const x = (at: Readonly<Record<string, number>>): number => at['x'] ?? Number.NaN;

describe('turning values', () => {
  it('are where a closed form says, on the side that holds', () => {
    const { turns, complete } = found({ of: (at) => x(at) ** 2, high: 50 });
    expect(turns).toHaveLength(1);
    expect(turns[0]).toMatchObject({ from: 'holds', to: 'outside' });
    expect(Math.abs((turns[0]?.at ?? 0) - Math.sqrt(50))).toBeLessThan(2e-9);
    expect(turns[0]?.at).toBeLessThanOrEqual(Math.sqrt(50));
    expect(complete).toBe(true);
  });

  it('are all six of a sine in two turns and a half', () => {
    const { turns } = found({ of: (at) => Math.sin(x(at) * 1.75 + 0.3), low: 0 });
    const truth = [1, 2, 3, 4, 5].map((k) => (k * Math.PI - 0.3) / 1.75);
    expect(turns.map((it) => it.at.toFixed(7))).toEqual(truth.map((it) => it.toFixed(7)));
  });

  it('come in a pair where a narrow dip passes the bound and comes back, however narrow for its steepness', () => {
    // A notch 0.004 wide: the first grid is 0.04 apart.
    const { turns } = found({ of: (at) => Math.abs(x(at) - 4.4321) * 10 - 0.02, low: 0 });
    expect(turns.map((it) => it.at.toFixed(6))).toEqual(['4.430100', '4.434100']);
  });

  it('survive kinks and gaps without an answer', () => {
    const { turns } = found({ of: (at) => (x(at) > 3 && x(at) < 4 ? null : Math.abs(x(at) - 8)), low: 1 });
    expect(turns.map(({ from, to }) => `${from} to ${to}`)).toEqual([
      'holds to no answer',
      'no answer to holds',
      'holds to outside',
      'outside to holds',
    ]);
    for (const [i, at] of [3, 4, 7, 9].entries()) expect(turns[i]?.at).toBeCloseTo(at, 8);
  });

  it('are the first step that stands otherwise, for a whole number', () => {
    const { turns, complete } = found({ of: (at) => 3 * x(at), low: 10 }, { whole: true });
    expect(turns).toEqual([{ below: 3, above: 4, at: 4, from: 'outside', to: 'holds' }]);
    expect(complete).toBe(true);
  });

  it('are found where a limit starts to apply', () => {
    const { turns } = found({ of: () => 1, low: 0, applies: (at) => x(at) >= 7.25 });
    expect(turns[0]).toMatchObject({ from: 'does not apply', to: 'holds' });
    expect(turns[0]?.above).toBeCloseTo(7.25, 8);
  });
});

describe('a limit that never turns', () => {
  it('has the least distance from its bound, and a floor under it that is nearly as high', () => {
    const { turns, closest, surely } = found({ of: (at) => 3 + (x(at) - 6.789) ** 2, low: 0 });
    expect(turns).toEqual([]);
    expect(closest?.room).toBeCloseTo(3, 10);
    expect(closest?.at).toBeCloseTo(6.789, 4);
    expect(surely).toBeLessThanOrEqual(3);
    expect(surely).toBeGreaterThan(2.9);
  });

  it('may be outside throughout', () => {
    const { first, closest, surely } = found({ of: (at) => -2 - Math.abs(x(at) - 1), low: 0 });
    expect(first).toBe('outside');
    expect(closest?.room).toBeCloseTo(-2, 6);
    expect(closest?.at).toBeCloseTo(1, 6);
    expect(surely).toBeGreaterThan(1.9);
  });

  it('is not called sure where the room jumps about', () => {
    const { surely, complete } = found({ of: (at) => 0.001 + Math.abs(Math.sin(1e6 * x(at))), low: 0 });
    expect(complete).toBe(false);
    expect(surely).toBeNull();
  });
});

it('a range that ends before it starts is refused in a sentence', () => {
  expect(() => found({ of: x, low: 0 }, { low: 3, high: 3 })).toThrow('from a number to a greater one');
});
