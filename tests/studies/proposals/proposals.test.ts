import { describe, expect, it } from 'vitest';
import { normalBelow } from '../../../src/calc/uncertainty/normal.ts';
import { readingOf } from '../../../src/plan/plan.ts';
import type { Evaluators } from '../../../src/studies/points.ts';
import type { Best, Mount, ProposalsAsk } from '../../../src/studies/proposals/ask.ts';
import { Bench } from '../../../src/studies/proposals/bench.ts';
import { Archive, frontOf, withBest } from '../../../src/studies/proposals/front.ts';
import { proposals } from '../../../src/studies/proposals/proposals.ts';
import { finish } from '../../../src/studies/study.ts';
import { plainEvaluators } from '../map/plain-map.ts';
import type { PlainLimit } from '../plain-evaluator.ts';
import { type PlainPointLimit, plainPoints } from '../plain-points.ts';
import { demoPlan, planPoints } from '../plan-points.ts';
import { normal } from '../published.ts';
import { everyMount, free, proposalsAsk, stepsOf } from './plain-ask.ts';

/** Every mount looked at, one by one; the ones that no other beats. */
function exhaustive(evaluators: Evaluators, ask: ProposalsAsk) {
  const inputs = ask.freed.map((it) => it.name);
  const evaluator = finish(evaluators.points(ask.scenario, { inputs, results: ask.bolts }, []));
  const bench = new Bench(ask, evaluator);
  const archive = new Archive();
  bench.look(everyMount(ask.freed), (mount, failing) => {
    if (failing.length === 0) archive.put(mount());
  });
  return frontOf(archive.mounts);
}

/** Limits with a narrow winding valley between them, and bolts that grow with the shims. */
const LIMITS: readonly PlainLimit[] = [
  {
    name: 'gap',
    of: (at) => 20 + 9 * at('shims') - 4 * Math.sin(at('height') / 7) - at('aside') / 3,
    low: 40,
  },
  { name: 'bend', of: (at) => (at('shims') + 2) * (0.1 + ((at('height') - 31) / 60) ** 2), high: 1.4 },
  { name: 'reach', of: (at) => at('height') + at('aside') * 2 - 6 * at('shims'), low: 2, high: 30 },
  { name: 'bolts', of: (at) => 60 + 10 * Math.ceil(at('shims') / 2), high: 1000 },
];

const SMALL = [
  free('shims', stepsOf(0, 8, 1), true),
  free('height', stepsOf(0, 60, 1)),
  free('aside', stepsOf(-20, 20, 1)),
];

describe('proposals for a small mount', () => {
  const evaluators = plainEvaluators(LIMITS, { shims: 0, height: 0, aside: 0 });
  const ask = proposalsAsk({ freed: SMALL, present: [1, 10, 0], evaluations: 25_000 });

  it('are those that an exhaustive search finds', () => {
    const every = exhaustive(evaluators, ask);
    const found = finish(proposals(evaluators, ask));
    expect(every.length).toBeGreaterThan(1);
    expect(found.proposals.map((it) => [it.shims, it.bolts])).toEqual(
      every.map((it) => [it.shims, it.bolts]),
    );
    found.proposals.forEach((it, n) => {
      expect(it.least).toBeCloseTo(every[n]?.least as number, 9);
    });
  });

  it('come within a hundredth of it where there are more mounts than can be looked at', () => {
    const few = { ...ask, evaluations: 9000 };
    const every = exhaustive(evaluators, ask);
    const found = finish(proposals(evaluators, few));
    expect(found.looked).toBeLessThan(10_000);
    for (const best of every) {
      const same = found.proposals.find((it) => it.shims === best.shims && it.bolts === best.bolts);
      expect(same?.least).toBeGreaterThan(best.least - 0.01);
    }
  });

  it('are the same for the same ask', () => {
    const quick = { ...ask, evaluations: 3000 };
    expect(finish(proposals(evaluators, quick))).toEqual(finish(proposals(evaluators, quick)));
  });

  it('change nothing that need not change', () => {
    const idle = free('idle', stepsOf(0, 50, 1));
    const found = finish(proposals(evaluators, { ...ask, freed: [...SMALL, idle], present: [1, 10, 0, 17] }));
    for (const it of found.proposals) expect(it.values[3]).toBe(17);
  });
});

describe('proposals for the demo plan', () => {
  it('are those that an exhaustive search finds', () => {
    const plan = demoPlan();
    const freed = [
      free('shim_count', stepsOf(0, 10, 1), true),
      free('upper_bracket_height', stepsOf(600, 1000, 20)),
      free('lower_bracket_height', stepsOf(100, 400, 20)),
    ];
    const ask = proposalsAsk({
      freed,
      present: freed.map((it) => readingOf(plan, it.name)?.value as number),
      shims: { input: 'shim_count', present: 0 },
      bolts: ['lower_bolt_length', 'foot_bolt_length'],
      evaluations: 3000,
    });
    const every = exhaustive(planPoints(plan), ask);
    const found = finish(proposals(planPoints(plan), ask));
    expect(every.length).toBeGreaterThan(0);
    expect(found.proposals.map((it) => [it.shims, it.bolts])).toEqual(
      every.map((it) => [it.shims, it.bolts]),
    );
    found.proposals.forEach((it, n) => {
      expect(it.least).toBeCloseTo(every[n]?.least as number, 9);
    });
  });
});

describe('odds as a goal', () => {
  // Two limits with the same room at 10, one of which rests on a reading three times as loose as the other.
  const limits: readonly PlainPointLimit[] = [
    { name: 'tight', of: ({ a = 0, n = 0 }) => 10 + a - n, low: 10 },
    { name: 'loose', of: ({ a = 0, m = 0 }) => 30 - a - m, low: 10 },
  ];
  const varied = [
    { ...normal('n', 0, 4), whole: false },
    { ...normal('m', 0, 12), whole: false },
  ];
  const holds = (a: number): number => normalBelow(a / 4) * normalBelow((20 - a) / 12);
  const ask = proposalsAsk({
    freed: [free('a', stepsOf(0, 20, 1))],
    present: [12],
    bolts: [],
    readings: { varied, share: 0, certainty: 0.99 },
  });
  const evaluators = plainPoints(limits, { n: 0, m: 0 });

  it('finds the mount that an exhaustive search by the closed form finds', () => {
    const { proposals: found, present } = finish(proposals(evaluators, ask));
    const values = stepsOf(0, 20, 1);
    const best = values.reduce((x, y) => (holds(y) > holds(x) ? y : x));
    const likeliest = found.find((it) => it.best.includes('odds'));
    expect(likeliest?.values).toEqual([best]);
    expect(found.find((it) => it.best.includes('room'))?.values).toEqual([10]);
    for (const it of [...found, present]) {
      const truth = holds(it.values[0] as number);
      expect(it.odds?.low).toBeLessThanOrEqual(truth);
      expect(it.odds?.high).toBeGreaterThanOrEqual(truth);
      expect((it.odds?.high ?? 1) - (it.odds?.low ?? 0)).toBeLessThan(0.05);
    }
  });

  it('takes a choice to be off as well where the plan says so', () => {
    const off = { ...normal('a', 12, 4), whole: false };
    const readings = { varied: [...varied, off], share: 0, certainty: 0.99 };
    const { present } = finish(proposals(evaluators, { ...ask, readings }));
    // Φ(12/√32) and Φ(8/√160), with the covariance of the two rooms below 0: at least their chances' sum less one.
    const [tight, loose] = [normalBelow(12 / Math.sqrt(32)), normalBelow(8 / Math.sqrt(160))];
    expect(present.odds?.high).toBeGreaterThan(tight + loose - 1);
    expect(present.odds?.low).toBeLessThan(tight * loose);
    expect(present.odds?.high).toBeLessThan(holds(12));
  });

  it('gives the odds of the owner’s other scenarios by what may be off there', () => {
    const calm = [varied[0], { ...normal('m', 0, 2), whole: false }].filter((it) => it !== undefined);
    const others = [
      { name: 'As now', values: [5], varied },
      { name: 'Measured again', values: [5], varied: calm },
      { name: 'No odds asked', values: [5] },
    ];
    const { scenarios } = finish(proposals(evaluators, { ...ask, scenarios: others }));
    expect(scenarios.map((it) => it.name)).toEqual(others.map((it) => it.name));
    const [now, again, none] = scenarios.map((it) => it.mount.odds);
    for (const [odds, truth] of [
      [now, holds(5)],
      [again, normalBelow(5 / 4) * normalBelow(15 / 2)],
    ] as const) {
      expect(odds?.low).toBeLessThanOrEqual(truth);
      expect(odds?.high).toBeGreaterThanOrEqual(truth);
      expect((odds?.high ?? 1) - (odds?.low ?? 0)).toBeLessThan(0.05);
    }
    expect(none).toBeUndefined();
  });

  it('keeps the ends of a long front', () => {
    const mounts = stepsOf(0, 29, 1).map((n) => ({
      values: [n],
      least: 1 - n / 100,
      limit: undefined,
      room: 1,
      failing: [],
      shims: 40 - n,
      bolts: 100,
      fails: Math.abs(n - 17) / 100 + 0.01,
    }));
    const front = frontOf(mounts);
    expect(front).toHaveLength(8);
    const of = (best: Best): number | undefined => front.find((it) => it.best.includes(best))?.values[0];
    expect([of('room'), of('shims'), of('odds')]).toEqual([0, 29, 17]);
  });
});

describe('feet that move together', () => {
  it('stay each other’s mirror image', () => {
    const limits: readonly PlainLimit[] = [
      { name: 'spread', of: (at) => at('right') - at('left'), low: 30, high: 50 },
      { name: 'edge', of: (at) => Math.max(at('right'), -at('left')), high: 22 },
    ];
    const feet = {
      name: 'feet',
      moves: [
        { input: 'left', sign: -1 as const },
        { input: 'right', sign: 1 as const },
      ],
      values: stepsOf(0, 40, 1),
      whole: false,
    };
    const found = finish(
      proposals(
        plainEvaluators(limits, { left: 0, right: 0 }),
        proposalsAsk({ freed: [feet], present: [-3, 4], bolts: [] }),
      ),
    );
    const [best] = found.proposals;
    expect(best?.values[0]).toBe(-(best?.values[1] as number));
    // Room (2r − 30)/20 against (22 − r)/22: most where 22r − 330 = 220 − 10r … r = 17.19, so 17.
    expect(best?.values[1]).toBe(17);
  });
});

describe('what is called best', () => {
  const mount = (over: Partial<Mount>): Mount => ({
    values: [over.least ?? 0, over.shims ?? 0, over.bolts ?? 0],
    least: 0.1,
    limit: undefined,
    room: 1,
    failing: [],
    shims: 3,
    bolts: 100,
    ...over,
  });

  it('is one mount alone at each thing', () => {
    const front = frontOf([
      mount({ least: 0.3, shims: 4, bolts: 120 }),
      mount({ least: 0.2, shims: 3, bolts: 110 }),
      mount({ least: 0.1, shims: 3, bolts: 100 }),
    ]);
    expect(front.map((it) => it.best)).toEqual([['room'], ['shims'], ['bolts']]);
    const alike = withBest([mount({ values: [1] }), mount({ values: [2] })]);
    expect(alike.map((it) => it.best)).toEqual([['room', 'shims', 'bolts'], []]);
  });

  it('is not one that is worse than the present mount or a scenario that keeps every limit', () => {
    const mounts = [mount({ least: 0.2 })];
    const better = mount({ least: 0.25, shims: 5 });
    expect(withBest(mounts, [better])[0]?.best).toEqual(['shims', 'bolts']);
    expect(withBest(mounts, [{ ...better, failing: ['gap'] }])[0]?.best).toEqual(['room', 'shims', 'bolts']);
  });

  it('reckons with the present mount and the scenarios, off the steps as they stand', () => {
    const limits: readonly PlainLimit[] = [
      { name: 'peak', of: (at) => 10 - Math.abs(at('a') - 4.3), low: 8 },
    ];
    const ask = proposalsAsk({ freed: [free('a', stepsOf(0, 20, 2))], present: [19], bolts: [] });
    const evaluators = plainEvaluators(limits, { a: 19 });
    const alone = finish(proposals(evaluators, ask)).proposals;
    expect(alone[0]?.values).toEqual([4]);
    const scenarios = [{ name: 'Mine', values: [4.3] }];
    const found = finish(proposals(evaluators, { ...ask, scenarios }));
    expect(found.proposals[0]).toMatchObject({ values: [4.3], best: expect.arrayContaining(['room']) });
    const stands = finish(proposals(evaluators, { ...ask, present: [4.2] }));
    expect(stands.proposals[0]?.values).toEqual([4.2]);
  });
});

describe('when nothing holds', () => {
  const limits: readonly PlainLimit[] = [
    { name: 'always', of: () => 0.5, high: 1 },
    { name: 'low', of: (at) => at('a') + at('b'), low: 12 },
    { name: 'high', of: (at) => at('a') - at('bound'), high: 0 },
    { name: 'other', of: (at) => at('b'), high: 6 },
    { name: 'loose', of: (at) => at('a') * at('b'), high: 400 },
  ];
  // a + b ≥ 12 with a ≤ bound = 4 and b ≤ 6: the three conflict, no two of them do.
  const freed = [free('a', stepsOf(0, 20, 1)), free('b', stepsOf(0, 20, 1))];
  const evaluators = plainEvaluators(limits, { a: 0, b: 0, bound: 4, idle: 0 });

  it('says the smallest set of limits that conflict, and the least change that would free it', () => {
    const { proposals: found, conflict } = finish(
      proposals(
        evaluators,
        proposalsAsk({
          freed,
          present: [0, 0],
          bolts: [],
          loosened: [
            { name: 'bound', present: 4, values: stepsOf(0, 12, 0.5), span: 12, limits: ['high'] },
            { name: 'idle', present: 0, values: stepsOf(0, 1, 0.1), span: 1, limits: [] },
          ],
        }),
      ),
    );
    expect(found).toEqual([]);
    expect([...(conflict?.limits ?? [])].sort()).toEqual(['high', 'low', 'other']);
    expect(conflict).toMatchObject({ isSmallest: true, shownBy: 'every mount' });
    expect(conflict?.loosenings).toHaveLength(1);
    expect(conflict?.loosenings[0]).toMatchObject({ name: 'bound', from: 4, to: 6 });
    expect(conflict?.loosenings[0]?.mount.values).toEqual([6, 6]);
  });

  it('never calls nearest a mount at which more limits fail than now', () => {
    // Now one limit fails by all of its bound; elsewhere two fail by next to nothing.
    const rivals: readonly PlainLimit[] = [
      { name: 'one', of: (at) => (at('a') === 0 ? -20 : 9.9), low: 10 },
      { name: 'other', of: (at) => (at('a') === 0 ? 20 : 9.9), low: 10 },
    ];
    const few = proposalsAsk({ freed: [free('a', stepsOf(0, 20, 1))], present: [0], bolts: [] });
    const { conflict, present } = finish(proposals(plainEvaluators(rivals, { a: 0 }), few));
    expect(present.failing).toEqual(['one']);
    expect(conflict?.nearest.failing).toEqual(['one']);
    // The present mount, though off the steps.
    const off: readonly PlainLimit[] = [{ name: 'near', of: (at) => Math.abs(at('a') - 3.5), high: -1 }];
    const stands = finish(proposals(plainEvaluators(off, { a: 3.5 }), { ...few, present: [3.5] }));
    expect(stands.conflict?.nearest.values).toEqual([3.5]);
  });

  it('finds a conflict of seven limits, and says what it rests on', () => {
    // The sum of six numbers is at least 31, and each is at most 5: any five of the six bounds can be kept.
    const letters = ['a', 'b', 'c', 'd', 'e', 'f'];
    const six: readonly PlainLimit[] = [
      { name: 'sum', of: (at) => letters.reduce((sum, it) => sum + at(it), 0), low: 31 },
      ...letters.map((it): PlainLimit => ({ name: it, of: (at) => at(it), high: 5 })),
    ];
    const freed = letters.map((it) => free(it, [0, 5, 6, 20]));
    const zero = Object.fromEntries(letters.map((it) => [it, 0]));
    const ask = proposalsAsk({ freed, present: letters.map(() => 0), bolts: [] });
    const { conflict } = finish(proposals(plainEvaluators(six, zero), ask));
    expect([...(conflict?.limits ?? [])].sort()).toEqual(['a', 'b', 'c', 'd', 'e', 'f', 'sum']);
    expect(conflict).toMatchObject({ isSmallest: false, shownBy: 'every mount' });
    const few = finish(proposals(plainEvaluators(six, zero), { ...ask, evaluations: 2000 }));
    expect(few.conflict?.shownBy).toBe('a search');
  });

  it('names one limit where that alone cannot be kept', () => {
    const never: PlainLimit = { name: 'never', of: () => 2, high: 1 };
    const { conflict } = finish(
      proposals(
        plainEvaluators([...limits, never], { a: 0, b: 0, bound: 4 }),
        proposalsAsk({ freed, present: [0, 0], bolts: [] }),
      ),
    );
    expect(conflict?.limits).toEqual(['never']);
    expect(conflict?.loosenings).toEqual([]);
  });
});

it('refuses to search when nothing is free', () => {
  const none = proposalsAsk({ freed: [], present: [] });
  expect(() => finish(proposals(plainEvaluators(LIMITS), none))).toThrow(
    'Nothing is free to move: free at least one choice.',
  );
});
