import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { NoAnswer } from '../../../src/calc/answer.ts';
import { rudderGapSwung } from '../../../src/calc/rudders/gap-swung.ts';
import { within } from '../within.ts';
import {
  alongAt,
  argumentsOf,
  closedAt,
  facesAt,
  type Rudders,
  reachAt,
  sharedHeights,
  swungReference,
} from './swung-reference.ts';

/** Rudders that share a height, with chords that have a length. */
const anyRudders = (): fc.Arbitrary<Rudders> =>
  fc
    .record({
      mainSwing: fc.oneof(
        { weight: 8, arbitrary: within(0, 90) },
        { weight: 2, arbitrary: fc.constantFrom(0, 90) },
      ),
      vaneSwing: fc.oneof(
        { weight: 8, arbitrary: within(0, 90) },
        { weight: 2, arbitrary: fc.constantFrom(0, 90) },
      ),
      chord: within(100, 400),
      balanced: fc.oneof(
        { weight: 6, arbitrary: within(0, 0.5) },
        { weight: 1, arbitrary: fc.constantFrom(0, 1) },
      ),
      vaneHead: within(-400, 200),
      span: within(300, 1200),
      mainHead: within(-300, 200),
      depth: within(500, 1800),
      overhang: within(-100, 200),
      overhangFoot: within(-100, 200),
      stockAhead: within(150, 700),
      shaftX: within(-100, 500),
      lowerBracket: within(100, 500),
      lean: fc.oneof({ weight: 3, arbitrary: within(-15, 15) }, { weight: 1, arbitrary: fc.constant(0) }),
      offset: fc.oneof({ weight: 5, arbitrary: within(-600, 600) }, { weight: 1, arbitrary: fc.constant(0) }),
      sideLean: fc.oneof({ weight: 1, arbitrary: within(-15, 15) }, { weight: 2, arbitrary: fc.constant(0) }),
      // Some of the time the line of centres comes into or leaves a swing at this share of the shared heights.
      // And some of the time both swing alike, so that edges run parallel to the line of centres there.
      alike: fc.integer({ min: 0, max: 4 }).map((it) => it === 0),
      turns: fc.option(within(0.05, 0.95), { freq: 3 }),
    })
    .map(({ balanced, span, depth, turns, alike, ...rest }) => {
      const it: Rudders = {
        ...rest,
        vaneSwing: alike ? Math.min(rest.mainSwing, 45) : rest.vaneSwing,
        balance: rest.chord * balanced,
        vaneFoot: rest.vaneHead - span,
        mainFoot: rest.mainHead - depth,
      };
      const [from, to] = sharedHeights(it);
      const swing = (Math.min(it.mainSwing, it.vaneSwing, 75) * Math.PI) / 180;
      return turns === null || Math.abs(it.lean) < 0.5 || it.sideLean !== 0
        ? it
        : { ...it, offset: Math.sign(it.offset) * alongAt(it, from + (to - from) * turns) * Math.tan(swing) };
    });

const gap = (it: Rudders): number => {
  const answer = rudderGapSwung(...argumentsOf(it));
  if (answer instanceof NoAnswer) throw new Error(answer.why);
  return answer;
};

const base: Rudders = {
  mainSwing: 35,
  vaneSwing: 45,
  chord: 230,
  balance: 55,
  vaneHead: -50,
  vaneFoot: -950,
  mainHead: -100,
  mainFoot: -1200,
  overhang: 35,
  overhangFoot: 58,
  stockAhead: 450,
  shaftX: 164.7,
  lowerBracket: 250,
  lean: 0,
  offset: 0,
  sideLean: 0,
};

describe('the closest approach of two swinging rudders', { timeout: 30_000 }, () => {
  it('is what trying every height and angle finds, to a hundredth of a millimetre', () => {
    const met = { facing: 0, aside: 0, both: 0, crossing: 0, leaning: 0, tipping: 0 };
    fc.assert(
      fc.property(anyRudders(), (it) => {
        const [from, to] = sharedHeights(it);
        fc.pre(from <= to);
        const answer = gap(it);
        const { coarse, bound, fine } = swungReference(it);
        expect(coarse).toBeGreaterThanOrEqual(answer - 1e-9);
        expect(fine).toBeGreaterThanOrEqual(answer - 1e-9);
        expect(coarse - answer).toBeLessThanOrEqual(bound);
        expect(fine - answer).toBeLessThanOrEqual(0.01);
        const ends = [facesAt(it, from), facesAt(it, to)];
        met[ends[0] && ends[1] ? 'facing' : ends[0] || ends[1] ? 'both' : 'aside']++;
        if (answer <= 0) met.crossing++;
        if (it.lean !== 0) met.leaning++;
        if (it.sideLean !== 0) met.tipping++;
      }),
      { numRuns: 200, seed: 20, endOnFailure: true },
    );
    // The draws reach every kind of pair.
    for (const count of Object.values(met)) expect(count).toBeGreaterThan(10);
  });

  it('is the distance of the axes less both reaches while each can point at the other', () => {
    // By hand: axes 500 apart (400 aft, 300 abeam, 36.9°); reaches 300 and 50.
    const hand: Rudders = {
      ...base,
      overhang: 0,
      overhangFoot: 0,
      stockAhead: 300,
      shaftX: 100,
      balance: 50,
      offset: 300,
    };
    expect(gap({ ...hand, mainSwing: 45 })).toBeCloseTo(150, 9);
    // With the vane rudder's swing at 0 its leading edge stays 350 aft and 300 abeam, the other rudder reaches 45°:
    // its after edge at 300·(cos, sin)(40.6°) is nearest, √(350² + 300²) − 300 away.
    expect(gap({ ...hand, mainSwing: 45, vaneSwing: 0 })).toBeCloseTo(Math.hypot(350, 300) - 300, 9);
    // With both at 0 the nearest is from after edge (300, 0) to leading edge (350, 300).
    expect(gap({ ...hand, mainSwing: 0, vaneSwing: 0 })).toBeCloseTo(Math.hypot(50, 300), 9);
  });

  it('is below 0 when the reaches overlap, 0 when the rudders cross from the side', () => {
    // By hand, at −950: the after edge has come out to 35 + 23·850/1100, the leading edge stands at 50 − 55.
    expect(gap({ ...base, shaftX: 50 })).toBeCloseTo(50 - 55 - (35 + (23 * 850) / 1100), 9);
    // The axes abreast at 200: the line of centres is out of both swings, and the sectors overlap.
    expect(gap({ ...base, shaftX: -450, offset: 200, mainSwing: 60, vaneSwing: 60 })).toBe(0);
  });

  it('is that of brute force too where wide stops let the after part swing forward', () => {
    let behind = 0;
    fc.assert(
      fc.property(
        anyRudders(),
        within(65, 90),
        within(25, 60),
        within(0.3, 0.95),
        (drawn, vane, main, share) => {
          // The line of centres lies within both swings at the lower bracket, and the lean moves it along the heights.
          const along = drawn.stockAhead + Math.abs(drawn.shaftX);
          const it: Rudders = {
            ...drawn,
            shaftX: Math.abs(drawn.shaftX),
            vaneSwing: vane,
            mainSwing: main,
            balance: drawn.chord * 0.1,
            offset: along * Math.tan((main * share * Math.PI) / 180),
          };
          const [from, to] = sharedHeights(it);
          fc.pre(from <= to);
          const answer = gap(it);
          const { coarse, fine } = swungReference(it);
          expect(coarse).toBeGreaterThanOrEqual(answer - 1e-9);
          expect(fine - answer).toBeLessThanOrEqual(0.01);
          if (answer < Math.min(closedAt(it, from), closedAt(it, to)) - 1) behind++;
        },
      ),
      { numRuns: 60, seed: 3, endOnFailure: true },
    );
    expect(behind).toBeGreaterThan(3);
  });

  it('comes from the after tip where wide stops and a shaft far aside let it come nearer', () => {
    // Brute force over both swings on a 0.6 mm grid: 49.8 mm; the part ahead of the axis alone would leave 60.3.
    const wide: Rudders = {
      ...base,
      overhang: 35,
      overhangFoot: 35,
      shaftX: 520 - base.stockAhead,
      offset: 300,
      vaneSwing: 90,
    };
    expect(Math.abs(gap(wide) - 49.8)).toBeLessThanOrEqual(0.1);
    expect(Math.hypot(520, 300) - 485 - 55).toBeCloseTo(60.33, 2);
  });

  it('is the same to port and to starboard', () => {
    fc.assert(
      fc.property(anyRudders(), (it) => {
        fc.pre(sharedHeights(it)[0] <= sharedHeights(it)[1]);
        expect(
          Math.abs(gap({ ...it, offset: -it.offset, sideLean: -it.sideLean }) - gap(it)),
        ).toBeLessThanOrEqual(1e-9);
      }),
    );
  });

  it('never grows when either rudder may swing further', () => {
    fc.assert(
      fc.property(anyRudders(), within(0, 1), within(0, 1), (it, main, vane) => {
        fc.pre(sharedHeights(it)[0] <= sharedHeights(it)[1]);
        const wider = {
          ...it,
          mainSwing: it.mainSwing + (90 - it.mainSwing) * main,
          vaneSwing: it.vaneSwing + (90 - it.vaneSwing) * vane,
        };
        expect(gap(wider)).toBeLessThanOrEqual(gap(it) + 2e-6);
      }),
      { numRuns: 500 },
    );
  });

  it('does not jump at the edge of a swing while it is positive', () => {
    fc.assert(
      fc.property(anyRudders(), within(5, 44), fc.boolean(), (drawn, angle, main) => {
        // Upright and straight, so that one angle holds at every height.
        const along = 600;
        const it: Rudders = {
          ...drawn,
          lean: 0,
          sideLean: 0,
          overhangFoot: drawn.overhang,
          shaftX: along - drawn.stockAhead,
          offset: along * Math.tan((angle * Math.PI) / 180),
          mainSwing: 45,
          vaneSwing: 45,
        };
        const [from, to] = sharedHeights(it);
        fc.pre(from <= to && closedAt(it, from) > 0);
        const swing = main ? 'mainSwing' : 'vaneSwing';
        const [out, edge] = [gap({ ...it, [swing]: angle - 1e-9 }), gap({ ...it, [swing]: angle + 1e-9 })];
        expect(Math.abs(out - edge)).toBeLessThanOrEqual(1e-6);
        expect(Math.abs(edge - closedAt(it, from))).toBeLessThanOrEqual(1e-9);
      }),
    );
  });

  it('keeps its answer when both swing alike and the line of centres leaves the swings along the height', () => {
    // There an edge of each sector lies along the line of centres; the rudders are far apart all the same.
    for (const swing of [10, 30, 45]) {
      const it: Rudders = { ...base, mainSwing: swing, vaneSwing: swing, lean: -10, shaftX: 400 };
      const leaving = alongAt(it, -500) * Math.tan((swing * Math.PI) / 180);
      const answer = gap({ ...it, offset: leaving });
      expect(answer).toBeGreaterThan(100);
      expect(Math.abs(answer - gap({ ...it, vaneSwing: swing + 1e-6, offset: leaving }))).toBeLessThanOrEqual(
        1e-3,
      );
    }
  });

  it('has no answer where the main rudder has no chord aft of its axis, tapering to it included', () => {
    fc.assert(
      fc.property(
        within(50, 900),
        within(-300, 300),
        within(-2000, -900),
        (stockAhead, overhang, mainFoot) => {
          fc.pre(overhang + stockAhead > 1);
          const it: Rudders = {
            ...base,
            vaneFoot: -3000,
            mainFoot,
            stockAhead,
            overhang,
            overhangFoot: -stockAhead,
          };
          expect(Math.abs(reachAt(it, it.mainFoot))).toBeLessThanOrEqual(1e-9);
          expect(rudderGapSwung(...argumentsOf(it))).toBeInstanceOf(NoAnswer);
          expect(rudderGapSwung(...argumentsOf({ ...it, overhangFoot: -stockAhead + 1 }))).toBeTypeOf(
            'number',
          );
          expect(rudderGapSwung(...argumentsOf({ ...it, overhangFoot: -stockAhead - 1 }))).toBeInstanceOf(
            NoAnswer,
          );
        },
      ),
    );
  });

  it('has no answer when the rudders share no height, and has one when they just touch', () => {
    expect(rudderGapSwung(...argumentsOf({ ...base, vaneHead: -1300, vaneFoot: -1900 }))).toBeInstanceOf(
      NoAnswer,
    );
    expect(gap({ ...base, vaneHead: -1200, vaneFoot: -1900 })).toBeCloseTo(164.7 - 55 - 58, 9);
  });
});
