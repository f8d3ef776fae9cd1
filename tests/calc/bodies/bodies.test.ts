import { afterAll, describe, expect, it } from 'vitest';
import { newPlan } from '../../../src/plan/new-plan.ts';
import { Workbook } from '../../../src/workbook/workbook.ts';
import { type Bolts, boltsOf } from './bolts-of.ts';
import { type Flange, gathered, pulls, shears } from './flange.ts';
import { type Mount, mountOf } from './mounts.ts';

/** The same on a thousand mounts: `npm run soak -- bodies`. */
const MOUNTS = 60;
const HAIR = 1e-6;

const upright: Omit<Flange, 'bolts'> = {
  out: [1, 0, 0],
  level: [0, 1, 0],
  up: [0, 0, 1],
  width: 200,
  height: 120,
};

describe('a rigid flange on bolts that only pull', () => {
  const two: Flange = {
    ...upright,
    bolts: [
      [-60, 0],
      [60, 0],
    ],
  };

  it('shares a straight pull', () => {
    expect(pulls(two, { force: [1000, 0, 0], moment: [0, 0, 0] })).toEqual([500, 500]);
  });

  it('turns about its far edge under a moment across: levers 160 and 40, pulls as the levers', () => {
    const found = pulls(two, { force: [0, 0, 0], moment: [0, 0, 170_000] }).sort((a, b) => a - b);
    expect(found[0]).toBeCloseTo(250, 6);
    expect(found[1]).toBeCloseTo(1000, 6);
  });

  it('is held by both bolts and an edge under a moment up the face: lever 60', () => {
    for (const pull of pulls(two, { force: [0, 0, 0], moment: [0, 120_000, 0] }))
      expect(pull).toBeCloseTo(1000, 6);
  });

  it('pulls rows in proportion to their way from the edge it turns about', () => {
    // Design of Machine Elements, p. 236: 25 kN at 100 mm, rows at 150 and 25 mm, two bolts each: 8108.108 N.
    const bracket: Flange = {
      ...upright,
      height: 200,
      bolts: [25, 150].flatMap((above) => [-40, 40].map((aside) => [aside, above - 100] as const)),
    };
    const found = pulls(
      bracket,
      gathered([
        [
          [100, 0, 0],
          [0, 0, -25_000],
        ],
      ]),
    );
    expect(Math.max(...found)).toBeCloseTo(8108.108, 3);
  });

  it('stretches nothing under a load that presses within it', () => {
    expect(
      pulls(
        two,
        gathered([
          [
            [0, 50, 30],
            [-1000, 0, 0],
          ],
        ]),
      ),
    ).toEqual([0, 0]);
  });

  it('shares shear and twist as a bolt group does', () => {
    // Shigley, 9th ed., Example 8-7: 16 kN at 425 mm on four bolts at ±75 and ±60 mm: 20.97 and 14.79 kN.
    const group: Flange = {
      ...upright,
      bolts: [-75, 75].flatMap((a) => [-60, 60].map((b) => [a, b] as const)),
    };
    const found = shears(
      group,
      gathered([
        [
          [0, 425, 0],
          [0, 0, 16_000],
        ],
      ]),
    ).sort((a, b) => a - b);
    for (const [i, printed] of [14_789, 14_789, 20_973, 20_973].entries())
      expect(Math.abs((found[i] ?? 0) - printed)).toBeLessThan(1);
  });
});

describe('lower and foot bolts beside free bodies in three dimensions', () => {
  const plan = newPlan('Free bodies');
  const book = new Workbook(plan, null);
  afterAll(() => book.destroy());

  const found: { readonly mount: Mount; readonly bolts: Bolts }[] = [];
  for (let seed = 1; found.length < MOUNTS; seed++) {
    const mount = mountOf(seed);
    const bolts = boltsOf(book, plan, mount);
    if (bolts !== null) found.push({ mount, bolts });
  }
  const above = (share: (it: Bolts) => number, of: (it: Mount) => boolean = () => true): Mount[] => {
    const some = found.filter(({ mount }) => of(mount));
    expect(some.length).toBeGreaterThan(MOUNTS / 10);
    return some.filter(({ bolts }) => share(bolts) > 1 + HAIR).map(({ mount }) => mount);
  };
  const isFlat = (it: Mount): boolean => it.transom_camber_radius === 0;
  const hasTwo = (it: Mount): boolean => it.foot_bolt_count === 2;

  it('pull no harder on a lower bolt', () => expect(above((it) => it.lower.tension)).toEqual([]));
  it('shear a lower bolt no more on a flat face', () =>
    expect(above((it) => it.lower.shear, isFlat)).toEqual([]));
  it('pull no harder on a foot of two bolts', () =>
    expect(above((it) => it.foot.tension, hasTwo)).toEqual([]));
  it('shear a foot of two bolts no more', () => expect(above((it) => it.foot.shear, hasTwo)).toEqual([]));
});
