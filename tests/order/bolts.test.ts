import { describe, expect, it } from 'vitest';
import { type BoltOrder, boltOrder } from '../../src/order/bolts.ts';
import type { Place } from '../../src/order/feet.ts';
import { stackOf } from '../../src/order/stack.ts';
import type { Inputs } from '../workbook/model-case.ts';
import { caseAsk } from './case-ask.ts';

const order = (changes: Inputs = {}, place: Place = 'lower'): BoltOrder => {
  const it = boltOrder(caseAsk(changes), place);
  if (typeof it === 'string') throw new Error(it);
  return it;
};

describe('bolts to order', () => {
  it('are two M12 × 110 at the bracket, with 6.8 mm beyond the nut', () => {
    // ISO 7089 h max 2.7, ISO 4032 m max 10.8: 110 − 87 − 5.4 − 10.8.
    const it = order();
    expect(it).toMatchObject({ count: 2, diameter: 12, length: 110, washers: 4, usual: 'shank' });
    expect(it.beyond).toBeCloseTo(6.8, 9);
    // ISO 4014: thread 30 long, so a shank of 80, inside grip and washers of 92.4.
    expect(it.threadReaches).toBe(true);
  });

  it('take a second nut only where one full pitch still shows, EN 1090-2 8.2.2', () => {
    // ISO 4035 M12 is 6.0 high and the pitch 1.75: 6.8 past the nut is too little for 7.75.
    expect(order().lock).toBe('locking nut');
    // 60 − 39 − 5.4 − 10.8 = 4.8 past it: a locking nut of 12 (DIN 985) leaves 3.6.
    expect(order({}, 'port')).toMatchObject({ length: 60, lock: 'locking nut', nuts: 2 });
    // A grip of 88 asks for 107.7, so 110; of 91 for 110.7, so 120, with 12.8 beyond.
    expect(order({ flange_thickness: 14 }).lock).toBe('second nut');
  });

  it('have the length of the plan’s own result, and a nut that locks on it, whatever the size and the grip', () => {
    // ISO 4032 m max and DIN 985 h max: two pitches past the one come through the other by a millimetre or more.
    for (const [size, pitch, nut, ring] of [
      [6, 1, 5.2, 6],
      [8, 1.25, 6.8, 8],
      [10, 1.5, 8.4, 10],
      [12, 1.75, 10.8, 12],
    ] as const) {
      expect(2 * pitch - (ring - nut)).toBeGreaterThan(1);
      for (const flange_thickness of [3, 6.1, 8.05, 11, 17.3]) {
        const ask = caseAsk({ bolt_diameter: size, flange_thickness });
        for (const [place, result] of [
          ['lower', 'lower_bolt_length'],
          ['port', 'foot_bolt_length'],
        ] as const)
          expect(boltOrder(ask, place)).toMatchObject({
            length: ask(result),
            beyond: expect.toSatisfy((it: number) => it >= 2 * pitch - 1e-9),
          });
      }
    }
  });

  it.each([
    // ISO 4014 usual lengths (from memory): M12 50–120, M8 40–80; ISO 4017: M12 from 25, M8 from 16.
    [{ shim_count: 4 }, 'shank'],
    [{ shim_count: 6 }, 'long'],
    [{ bolt_diameter: 8, shim_count: 4 }, 'long'],
    [{ bolt_diameter: 8, shim_count: 0 }, 'shank'],
    [{ shim_count: 0, transom_thickness: 4, plate_thickness: 2, bed_thickness: 0 }, 'full thread'],
  ] as const)('say how usual a length is: %o is %s', (changes, usual) => {
    expect(order(changes).usual).toBe(usual);
  });

  it('become threaded rod past 500 mm', () => {
    // 40 shims of 12: a grip of 519. Rod: 519 + 2 × 2.7 + 2 × 10.8 + 2 × 6 + 4 × 1.75 = 565, and up to the next mm.
    const it = order({ shim_count: 40 });
    expect(it.length).toBeUndefined();
    expect(it.rod).toBe(565);
    expect(it.nuts).toBe(8);
  });

  it('want taper washers where a wedge leaves the faces out of square', () => {
    expect(order().taperWashers).toBe(0);
    expect(order({ lower_flange_hinged: false })).toMatchObject({ taperWashers: 2, taper: 10 });
    expect(order({ lower_flange_hinged: false, transom_rake: 0.5 }).taperWashers).toBe(0);
  });

  it.each([
    // UNC stress areas 0.0318, 0.0524, 0.0775, 0.1419 in² (ASME B1.1) over ISO 898-1 20.1, 36.6, 58.0, 84.3 mm².
    [6, '1⁄4-20', (0.0318 * 645.16) / 20.1],
    [8, '5⁄16-18', (0.0524 * 645.16) / 36.6],
    [10, '3⁄8-16', (0.0775 * 645.16) / 58],
    [12, '1⁄2-13', (0.1419 * 645.16) / 84.3],
  ])('M%s is nearest to %s, which carries %s of it', (bolt_diameter, name, share) => {
    const it = order({ bolt_diameter });
    expect(it.inch.name).toBe(name);
    expect(it.inchShare).toBeCloseTo(share, 2);
  });

  it('come in inches: 87 mm and washers, nut and two threads of 1⁄2-13 reach 4.26 in, so 4 1⁄2', () => {
    // 3.4252 + 2 × 0.121 + 0.4375 + 2/13 = 4.2585.
    expect(order().inchLength).toBe(4.5);
  });

  it('stack from outside to inside, every layer that has a thickness', () => {
    const ask = caseAsk({ lower_flange_hinged: false });
    const bolt = order({ lower_flange_hinged: false });
    const layers = stackOf(ask, bolt);
    expect(layers.map(([what]) => what.split(',')[0])).toEqual([
      ...[
        'Bolt head',
        'Plain washer',
        'Taper washer',
        'Flange',
        'Wedge',
        '4 shims',
        'Sealant round the hole',
        'Transom',
      ],
      ...['Epoxy bed', 'Backing plate', 'Plain washer', 'Nut'],
    ]);
    // What is stacked is what is clamped; the wedge is measured level, and a bolt goes through it square to the face.
    expect(layers.reduce((sum, [, mm = 0]) => sum + mm, 0)).toBeCloseTo(bolt.grip, 9);
    const wedge = layers.find(([what]) => what.startsWith('Wedge'))?.[1];
    expect(wedge).toBeCloseTo((3 + 70 * Math.tan(Math.PI / 18)) * Math.cos(Math.PI / 18), 9);
  });
});
