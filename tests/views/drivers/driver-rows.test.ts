import { describe, expect, it } from 'vitest';
import type { LimitDrivers } from '../../../src/studies/drivers.ts';
import { driverRows, MOST_ROWS, roomEnds, tellingRows } from '../../../src/views/drivers/driver-rows.ts';

const slope = (left: number, right: number) => ({ left, right, kink: left !== right, within: 0 });

const of = (count: number): LimitDrivers => ({
  limit: 'gap',
  holds: true,
  room: 5,
  drivers: Array.from({ length: count }, (_, i) => ({
    input: `x${i}`,
    offBy: 2,
    slope: slope(1 / (i + 1), 1 / (i + 1)),
    perOffBy: 2 / (i + 1),
  })),
  soonest: null,
});

describe('rows of drivers', () => {
  it('say where the room goes to either side', () => {
    const kinked: LimitDrivers = {
      ...of(0),
      drivers: [{ input: 'x0', offBy: 2, slope: slope(3, -1), perOffBy: 6 }],
    };
    expect(driverRows(kinked)[0]).toMatchObject({ less: -6, more: -2 });
  });

  it('are at most ten, and none that would be a dot', () => {
    expect(tellingRows(driverRows(of(40)))).toHaveLength(MOST_ROWS);
    const [first, last] = driverRows(of(2));
    if (first === undefined || last === undefined) throw new Error('no rows');
    expect(tellingRows([first, { ...last, less: -0.01, more: 0.01 }])).toEqual([first]);
  });
});

describe('the rooms drawn', () => {
  const rows = driverRows(of(1));
  it('take in a bound that is near, and leave out one that is far', () => {
    expect(roomEnds(2.5, rows)[0]).toBeLessThan(0);
    expect(roomEnds(50, rows)[0]).toBeGreaterThan(0);
    expect(roomEnds(-2.5, rows)[1]).toBeGreaterThan(0);
  });
});
