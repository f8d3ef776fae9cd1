import { seeded } from '../../calc/uncertainty/seeded.ts';
import type { Evaluators, PointRange } from '../points.ts';
import { type Progress, type Study, staged } from '../study.ts';
import { type Conflict, inputsOf, type Mount, type Proposals, type ProposalsAsk } from './ask.ts';
import { Bench, type Genes, genesAt, type Watch } from './bench.ts';
import { FailingSets } from './conflict.ts';
import { Archive, frontOf, withBest } from './front.ts';
import { likeliest } from './likeliest.ts';
import { loosen } from './loosen.ts';
import { MountOdds } from './mount-odds.ts';
import { NearestMiss } from './nearest-miss.ts';
import { scenarioOdds, scenariosAt } from './other-scenarios.ts';
import { countOf, search } from './search.ts';
import { tidied } from './tidy.ts';

/** Mounts looked at where the formula engine answers each by itself. */
const MOST_BY_ENGINE = 1200;
/** Mounts looked at to see whether a few limits alone can be kept, and how often. */
const PER_CHECK = 6000;
const MOST_CHECKS = 12;
/** Part of all evaluations that climbs the odds, where they are a goal. */
const FOR_ODDS = 0.2;
const ODDS_STAGE = 'Working out the odds of each mount';
/** Steps of the search between two reports of what it has found. */
const BETWEEN_REPORTS = 24;

const NOTHING: Mount = {
  values: [],
  least: Number.NEGATIVE_INFINITY,
  limit: undefined,
  room: Number.NaN,
  failing: [],
  shims: Number.NaN,
  bolts: Number.NaN,
};

function rangesOf(ask: ProposalsAsk): PointRange[] {
  return inputsOf(ask).map((name, n): PointRange => {
    const all = ask.freed.flatMap(({ moves, values }) =>
      moves
        .filter((it) => it.input === name)
        .flatMap(({ sign }) => values.map((it) => (sign === 1 ? it : 0 - it))),
    );
    // The present mount and the scenarios may stand off the steps, and outside the usual range.
    const theirs = [ask.present, ...ask.scenarios.map((it) => it.values)].map((it) => it[n] ?? Number.NaN);
    const values = [...all, ...theirs.filter((it) => !Number.isNaN(it))];
    const whole = ask.freed.some((it) => it.whole && it.moves.some((move) => move.input === name));
    return { name, low: Math.min(...values), high: Math.max(...values), whole };
  });
}

/** What the owner has already: the present mount, and the scenarios' choices where all are known. */
const ownMounts = ({ present, scenarios }: ProposalsAsk): readonly (readonly number[])[] => [
  present,
  ...scenarios.map((it) => it.values).filter((values) => !values.some((it) => Number.isNaN(it))),
];

/** The same as genes. */
const ownGenes = (ask: ProposalsAsk): readonly Genes[] =>
  ownMounts(ask).map((values) => genesAt(ask.freed, inputsOf(ask), values));

function check(ask: ProposalsAsk): void {
  const empty = ask.freed.find((it) => it.values.length === 0 || it.moves.length === 0);
  if (ask.freed.length === 0) throw new RangeError('Nothing is free to move: free at least one choice.');
  if (empty !== undefined) throw new RangeError(`${empty.name} has no value it may have.`);
}

interface Found {
  archive: Archive;
  readonly sets: FailingSets;
  readonly miss: NearestMiss;
}

const watching = (found: Found, told: { news: boolean; holds: boolean }): Watch => {
  const { sets, miss } = found;
  return (mount, failing, violation) => {
    if (failing.length === 0) {
      told.holds = true;
      if (found.archive.put(mount())) told.news = true;
    } else if (!told.holds) {
      sets.put(failing, mount);
      miss.put(mount, failing, violation);
    }
  };
};

function* conflictOf(
  evaluators: Evaluators,
  ask: ProposalsAsk,
  bench: Bench,
  found: Found,
  watch: Watch,
  ranges: readonly PointRange[],
  /** Evaluations that the search before it had. */
  looked: number,
): Generator<Progress, Conflict | undefined, void> {
  const { sets, miss, archive } = found;
  const random = seeded(ask.seed + 1);
  const isEvery = countOf(ask.freed) <= looked;
  let shownBy: Conflict['shownBy'] = isEvery ? 'every mount' : 'chance';
  let smallest = sets.smallest();
  for (let n = 0; n < MOST_CHECKS && smallest !== undefined && !isEvery; n++) {
    const judged = new Set(smallest.limits);
    const evaluations = Math.min(PER_CHECK, ask.evaluations);
    const { freed } = ask;
    const best = yield* search(bench, {
      freed,
      random,
      evaluations,
      watch,
      judged,
      first: ownGenes(ask),
      firstThatHolds: true,
    });
    if (archive.mounts.length > 0) return undefined;
    if (best < 1) {
      shownBy = 'a search';
      break;
    }
    smallest = sets.smallest();
  }
  if (!isEvery) {
    // What was climbed so far is to fail by little in all, were it at more limits.
    bench.countsFirst = true;
    yield* search(bench, {
      freed: ask.freed,
      random,
      evaluations: Math.min(PER_CHECK, ask.evaluations),
      watch,
      first: [
        ...ownGenes(ask),
        ...(miss.mount === undefined ? [] : [genesAt(ask.freed, bench.inputs, miss.mount.values)]),
      ],
    });
    bench.countsFirst = false;
    if (archive.mounts.length > 0) return undefined;
  }
  const nearest = miss.mount;
  if (nearest === undefined)
    return { limits: [], isSmallest: true, shownBy, nearest: NOTHING, loosenings: [] };
  const { limits = [], isSmallest = true } = smallest ?? {};
  return {
    limits: limits.map((it) => bench.limits[it] as string),
    isSmallest,
    shownBy,
    nearest,
    loosenings: yield* loosen(
      evaluators,
      ask,
      { bench, sets, isEvery, conflict: shownBy === 'chance' ? [] : limits },
      ranges,
    ),
  };
}

/** The same with the chance, sampled, that everything holds at each mount that is shown and as it stands now. */
function* withOdds(plain: Proposals, odds: MountOdds): Generator<Progress, Proposals, void> {
  const shown: Mount[] = [];
  const of = plain.proposals.length + 1 + plain.scenarios.length;
  const oddsOf = (mount: Mount, done: number) =>
    staged(odds.holdsAt(mount.values), { done, of, stage: ODDS_STAGE });
  for (const [n, { best, ...mount }] of plain.proposals.entries())
    shown.push({ ...mount, odds: yield* oddsOf(mount, n) });
  const { present } = plain;
  const now = present === NOTHING ? present : { ...present, odds: yield* oddsOf(present, shown.length) };
  return { ...plain, proposals: shown.map((it) => ({ ...it, best: [] })), present: now };
}

/**
 * Searches over the choices that are free for mounts where every limit holds: those that no other beats at room, shims
 * and bolts. Where nothing holds it says which limits conflict, and what would free them. The same ask gives the same
 * proposals. Throws a sentence when nothing is free.
 */
export function* proposals(evaluators: Evaluators, ask: ProposalsAsk): Study<Proposals> {
  check(ask);
  const ranges = rangesOf(ask);
  const evaluator = yield* evaluators.points(
    ask.scenario,
    { inputs: inputsOf(ask), results: ask.bolts },
    ranges,
  );
  const { road } = evaluator;
  const bench = new Bench(ask, evaluator);
  const found: Found = { archive: new Archive(), sets: new FailingSets(), miss: new NearestMiss() };
  const told = { news: false, holds: false };
  const watch = watching(found, told);
  const [present = NOTHING] = ownMounts(ask).map((it) => bench.mountAt(it, watch) ?? NOTHING);

  const answer = (mounts: readonly Mount[], scenarios: Proposals['scenarios'] = []): Proposals => ({
    proposals: frontOf(mounts, [present, ...scenarios.map((it) => it.mount)]),
    present,
    scenarios,
    looked: bench.looked,
    road,
  });
  const reckoning = road.by === 'replay' ? ask.readings : undefined;
  const most = road.by === 'replay' ? ask.evaluations : Math.min(ask.evaluations, MOST_BY_ENGINE);
  const forOdds = reckoning === undefined ? 0 : Math.round(FOR_ODDS * most);
  const steps = search(bench, {
    freed: ask.freed,
    random: seeded(ask.seed),
    evaluations: most - forOdds,
    watch,
    first: ownGenes(ask),
  });
  let steady = BETWEEN_REPORTS;
  for (let step = steps.next(); step.done !== true; step = steps.next()) {
    steady++;
    const progress = { ...step.value, of: Math.max(most, step.value.of) };
    if (!told.news || steady < BETWEEN_REPORTS) yield progress;
    else {
      [told.news, steady] = [false, 0];
      yield { ...progress, soFar: answer(found.archive.mounts) };
    }
  }
  const odds =
    reckoning === undefined || found.archive.mounts.length === 0
      ? undefined
      : yield* MountOdds.over(evaluators, ask, reckoning, ranges);
  if (odds !== undefined) found.archive = yield* likeliest(bench, odds, ask, found.archive, forOdds, watch);

  const conflict =
    found.archive.mounts.length > 0
      ? undefined
      : yield* conflictOf(evaluators, ask, bench, found, watch, ranges, most - forOdds);
  const tidy = new Archive();
  for (const mount of frontOf(found.archive.mounts)) {
    const { best, ...plain } = mount;
    tidy.put(tidied(plain, ask.present, ask.freed, bench));
  }
  const scenarios = yield* scenariosAt(evaluators, ask, ranges);
  const plain = answer(tidy.mounts, scenarios);
  if (odds === undefined) return { ...plain, ...(conflict === undefined ? {} : { conflict }) };
  yield { done: most, of: most, soFar: plain };
  const likely = yield* withOdds(plain, odds);
  const done = plain.proposals.length + 1;
  const withTheirs = scenarioOdds(evaluators, ask, ranges, scenarios);
  const stage = { done, of: done + scenarios.length, stage: ODDS_STAGE };
  const theirs = yield* staged(withTheirs, stage);
  const others = [likely.present, ...theirs.map((it) => it.mount)];
  return { ...likely, scenarios: theirs, proposals: withBest(likely.proposals, others) };
}
