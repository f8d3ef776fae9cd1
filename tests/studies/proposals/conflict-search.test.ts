import { describe, expect, it } from 'vitest';
import { type Plan, readingOf, type Value } from '../../../src/plan/plan.ts';
import { proposalsAsk } from '../../../src/session/studies/proposals-ask.ts';
import type { Evaluators } from '../../../src/studies/points.ts';
import type { Freed, Loosened, Loosening, ProposalsAsk } from '../../../src/studies/proposals/ask.ts';
import { Bench } from '../../../src/studies/proposals/bench.ts';
import { Archive, frontOf } from '../../../src/studies/proposals/front.ts';
import { NearestMiss } from '../../../src/studies/proposals/nearest-miss.ts';
import { proposals } from '../../../src/studies/proposals/proposals.ts';
import { finish } from '../../../src/studies/study.ts';
import { contentsOf } from '../../../src/workbook/contents.ts';
import { uses } from '../../../src/workbook/loops.ts';
import { demoPlan, planPoints } from '../plan-points.ts';
import { everyMount, free, stepsOf } from './plain-ask.ts';

function planWith(values: Readonly<Record<string, Value>>): Plan {
  const plan = demoPlan();
  const inputs = new Map(plan.inputs);
  for (const [name, value] of Object.entries(values)) {
    const reading = inputs.get(name);
    if (reading === undefined) throw new Error(`There is no input named ${name}.`);
    inputs.set(name, { ...reading, value });
  }
  return { ...plan, inputs };
}

/** What the plan's owner would ask, with these choices free over these values, and no odds. */
function askOf(plan: Plan, freed: readonly Freed[], over: Partial<ProposalsAsk> = {}): ProposalsAsk {
  const asked = proposalsAsk({
    plan,
    scenario: null,
    free: freed.map((it) => it.name),
    value: (name) => readingOf(plan, name)?.value ?? null,
    uses: uses(contentsOf(plan, null)),
    stepOf: (cell) => cell.step ?? 1,
  });
  const { readings, ...ask } = asked;
  const present = freed.map((it) => readingOf(plan, it.name)?.value as number);
  return { ...ask, freed, present, scenarios: [], ...over };
}

/** For every value of what is given way on: how many of all mounts keep every limit, judged one by one. */
function holdingAt(
  points: Evaluators,
  { freed, bolts, ...ask }: ProposalsAsk,
  one: Loosened,
): Map<number, number> {
  const wide = { ...ask, bolts, freed: [...freed, free(one.name, one.values)] };
  const inputs = wide.freed.map((it) => it.name);
  const evaluator = finish(points.points(null, { inputs, results: bolts }, []));
  const holding = new Map<number, number>();
  new Bench(wide, evaluator).look(everyMount(wide.freed), (mount, failing) => {
    if (failing.length > 0) return;
    const to = mount().values.at(-1) as number;
    holding.set(to, (holding.get(to) ?? 0) + 1);
  });
  return holding;
}

/** The least change of each that frees some mount, as a share of its range: every mount with every value. */
function exhaustive(
  points: Evaluators,
  ask: ProposalsAsk,
): readonly (readonly [name: string, far: number])[] {
  return ask.loosened
    .flatMap((one) => {
      const held = [...holdingAt(points, ask, one).keys()];
      return held.length === 0
        ? []
        : [[one.name, Math.min(...held.map((to) => Math.abs(to - one.present) / one.span))] as const];
    })
    .sort((x, y) => x[1] - y[1])
    .slice(0, 4);
}

const farOf = ({ loosened }: ProposalsAsk, { name, from, to }: Loosening): number =>
  Math.abs(to - from) / (loosened.find((it) => it.name === name)?.span ?? 1);

const some = (all: readonly Loosened[], ...names: readonly string[]): readonly Loosened[] =>
  all.filter((it) => names.includes(it.name));

describe('a wide gap asked for under sleeves, with shims and lower bracket free', () => {
  const plan = planWith({ shim_sleeve: true, rudder_gap_min: 110 });
  const freed = [
    free('shim_count', stepsOf(0, 10, 1), true),
    free('lower_bracket_height', stepsOf(50, 600, 5)),
  ];
  const ask = askOf(plan, freed);

  it('is freed by a lesser gap, though the mounts that hold then rank low as the limits stand', () => {
    const loosened = some(ask.loosened, 'rudder_gap_min', 'shim_stack_max');
    const points = planPoints(plan);
    const { conflict } = finish(proposals(points, { ...ask, loosened }));
    expect(conflict?.shownBy).toBe('every mount');
    const [one] = some(ask.loosened, 'rudder_gap_min');
    if (one === undefined) throw new Error('The gap asked for is something to give way on.');
    const holding = holdingAt(points, ask, one);
    const most = Math.max(...holding.keys());
    // By hand: six shims give 81.3 mm, the bracket as low as its bearing gap lets it some 9 mm more.
    expect(most).toBe(90);
    expect(holding.get(85)).toBeGreaterThan(holding.get(90) ?? 0);
    const gap = conflict?.loosenings.find((it) => it.name === 'rudder_gap_min');
    expect(gap?.to).toBe(most);
    expect(conflict?.loosenings.map((it) => it.name)).toContain('shim_stack_max');
  });
});

describe('changes that free a mount', () => {
  const names = ['rudder_gap_min', 'shim_stack_max', 'lower_reach', 'drive_gap_min'];
  const three = [
    free('shim_count', stepsOf(0, 8, 1), true),
    free('lower_bracket_height', stepsOf(150, 350, 40)),
    free('upper_bracket_height', stepsOf(640, 940, 60)),
  ];
  const four = [...three, free('shaft_foot_height', stepsOf(20, 180, 80))];

  it.each([
    ['three choices and a wide gap', three, { shim_sleeve: true, rudder_gap_min: 110 }],
    ['three choices and a long drive unit', three, { drive_gap_min: 230, spacing_min: 560 }],
    ['four choices and a wider gap', four, { shim_sleeve: true, rudder_gap_min: 120 }],
  ] as const)('are those that an exhaustive search finds: %s', (_, freed, values) => {
    const plan = planWith(values);
    const whole = askOf(plan, freed);
    const ask = { ...whole, loosened: some(whole.loosened, ...names) };
    const points = planPoints(plan);
    const every = exhaustive(points, ask);
    expect(every.length).toBeGreaterThan(0);
    for (const evaluations of [60_000, 250]) {
      const { conflict } = finish(proposals(points, { ...ask, evaluations }));
      expect(conflict?.shownBy).toBe(evaluations > 250 ? 'every mount' : 'a search');
      const found = (conflict?.loosenings ?? []).map((it) => [it.name, farOf(ask, it)] as const);
      expect(found).toEqual(every);
    }
  });
});

describe('the nearest mount', () => {
  it('fails the fewest limits, and of those by the least, as an exhaustive search has it', () => {
    const plan = planWith({ rudder_gap_min: 150 });
    const freed = [
      free('shim_count', stepsOf(0, 8, 1), true),
      free('lower_bracket_height', stepsOf(170, 330, 10)),
      free('shaft_foot_height', stepsOf(40, 140, 20)),
    ];
    const ask = { ...askOf(plan, freed), loosened: [] };
    const points = planPoints(plan);
    const evaluator = finish(
      points.points(null, { inputs: freed.map((it) => it.name), results: ask.bolts }, []),
    );
    const every = new NearestMiss();
    new Bench(ask, evaluator).look(everyMount(freed), (mount, failing, violation) =>
      every.put(mount, failing, violation),
    );
    const { conflict, present } = finish(proposals(points, { ...ask, evaluations: 500 }));
    expect(conflict?.nearest.failing).toEqual(every.mount?.failing);
    expect(conflict?.nearest.least).toBeCloseTo(every.mount?.least as number, 9);
    expect(conflict?.nearest.failing.length).toBeLessThanOrEqual(present.failing.length);
  });
});

describe('mounts that keep every limit', () => {
  it('are found among four free choices as an exhaustive search finds them', () => {
    const plan = planWith({});
    const freed = [
      free('shim_count', stepsOf(2, 6, 1), true),
      free('lower_bracket_height', stepsOf(130, 330, 20)),
      free('upper_bracket_height', stepsOf(680, 880, 20)),
      free('shaft_foot_height', stepsOf(0, 150, 30)),
    ];
    const ask = { ...askOf(plan, freed), loosened: [] };
    const points = planPoints(plan);
    const archive = new Archive();
    const inputs = freed.map((it) => it.name);
    const evaluator = finish(points.points(null, { inputs, results: ask.bolts }, []));
    new Bench(ask, evaluator).look(everyMount(freed), (mount, failing) => {
      if (failing.length === 0) archive.put(mount());
    });
    const every = frontOf(archive.mounts);
    expect(every.length).toBeGreaterThan(1);
    // A search that looks at two mounts of five finds the same front.
    const found = finish(proposals(points, { ...ask, evaluations: 1500 }));
    expect(found.proposals.map((it) => [it.shims, it.bolts])).toEqual(
      every.map((it) => [it.shims, it.bolts]),
    );
    for (const [n, it] of found.proposals.entries())
      expect(it.least).toBeCloseTo(every[n]?.least as number, 9);
  });
});
