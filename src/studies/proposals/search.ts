import type { Progress } from '../study.ts';
import type { Freed } from './ask.ts';
import type { Bench, Genes, Seen, Watch } from './bench.ts';

/** Mounts kept for each case. */
const CROWD = 14;
/** Cases, one for each way of setting the counts; with more than this only the first counts are told apart. */
const MOST_CASES = 44;
/** Rounds without any gain after which a crowd has come to its end, and a new one is drawn. */
const PATIENCE = 30;
/** Rounds without one mount that was not looked at before, after which the search ends. */
const ALL_SEEN = 2 * PATIENCE;

export interface SearchAsk {
  readonly freed: readonly Freed[];
  readonly random: () => number;
  readonly evaluations: number;
  /** Told of every mount. */
  readonly watch?: Watch;
  /** The limits that count, by number; all when left out. */
  readonly judged?: ReadonlySet<number>;
  /** Mounts to begin with, besides those drawn. */
  readonly first: readonly Genes[];
  /** The search ends as soon as it has found a mount at which all judged limits hold. */
  readonly firstThatHolds?: boolean;
}

interface Case {
  /** Genes that are fixed in it; −1 where free. */
  readonly fixed: readonly number[];
  crowd: Genes[];
  scores: number[];
  /** The best score of this crowd, and for how many rounds it has stood. */
  high: number;
  idle: number;
  /** The best score of all its crowds. */
  best: number;
}

/** Every way of setting the counts among the freed choices, as long as they are few. */
function casesOf(freed: readonly Freed[]): number[][] {
  let cases: number[][] = [freed.map(() => -1)];
  freed.forEach(({ whole, values }, i) => {
    if (!whole || cases.length * values.length > MOST_CASES) return;
    cases = cases.flatMap((it) => values.map((_, value) => it.with(i, value)));
  });
  return cases;
}

/** A child of a case's crowd by differential evolution: the best or another, moved by the difference of two. */
function childOf(
  { fixed, crowd, scores }: Case,
  parent: number,
  freed: readonly Freed[],
  random: () => number,
): Genes {
  const pick = (): Genes => crowd[Math.floor(random() * crowd.length)] as Genes;
  const top = crowd[scores.indexOf(Math.max(...scores))] as Genes;
  const [a, b, from] = [pick(), pick(), random() < 0.5 ? top : pick()];
  const stride = 0.4 + 0.6 * random();
  const change = 0.3 + 0.6 * random();
  const sure = Math.floor(random() * freed.length);
  const own = crowd[parent] as Genes;
  return freed.map(({ values }, i) => {
    const held = fixed[i] as number;
    if (held >= 0) return held;
    if (i !== sure && random() > change) return own[i] as number;
    const moved = (from[i] as number) + stride * ((a[i] as number) - (b[i] as number));
    // A crowd that has come together still looks about itself.
    const about = moved + (random() < 0.3 ? Math.round((random() - 0.5) * 6) : 0);
    const last = values.length - 1;
    const inside = about < 0 ? -about : about > last ? 2 * last - about : about;
    return Math.min(last, Math.max(0, Math.round(inside)));
  });
}

const STRIDES = [1, 2, 3, 5, 10, 20];
const PAIRS = [1, -1, 2, -2].flatMap((p) => [1, -1, 2, -2].map((q) => [p, q] as const));

/** Mounts one or two moves away: what is left when no child does better. */
function neighbours(genes: Genes, { fixed }: Case, freed: readonly Freed[]): Genes[] {
  const inside = (i: number, gene: number): boolean => gene >= 0 && gene < (freed[i] as Freed).values.length;
  const free = freed.flatMap((_, i) => ((fixed[i] as number) < 0 ? [i] : []));
  const found: Genes[] = [];
  for (const i of free) {
    for (const by of STRIDES.flatMap((it) => [it, -it])) {
      const gene = (genes[i] as number) + by;
      if (inside(i, gene)) found.push(genes.with(i, gene));
    }
    for (const j of free.filter((it) => it > i)) {
      for (const [a, b] of PAIRS) {
        const [x, y] = [(genes[i] as number) + a, (genes[j] as number) + b];
        if (inside(i, x) && inside(j, y)) found.push(genes.with(i, x).with(j, y));
      }
    }
  }
  return found;
}

/** Mounts looked at together where every one is. */
export const TOGETHER = 512;

/** How many mounts there are. */
export const countOf = (freed: readonly Freed[]): number =>
  freed.reduce((count, it) => count * it.values.length, 1);

/** Looks at every mount there is. */
function* lookAtAll(
  bench: Bench,
  { freed, watch, judged, firstThatHolds }: SearchAsk,
): Generator<Progress, number, void> {
  const count = countOf(freed);
  let best = Number.NEGATIVE_INFINITY;
  for (let from = 0; from < count; from += TOGETHER) {
    const some = Array.from({ length: Math.min(TOGETHER, count - from) }, (_, n): Genes => {
      let rest = from + n;
      return freed.map(({ values }) => {
        const gene = rest % values.length;
        rest = Math.floor(rest / values.length);
        return gene;
      });
    });
    for (const { score } of bench.lookAt(some, watch, judged)) best = Math.max(best, score);
    yield { done: from + some.length, of: count };
    if (firstThatHolds === true && best >= 1) break;
  }
  return best;
}

/**
 * Searches for mounts with the most room, each way of setting the counts for itself: crowds that evolve side by side.
 * From the best of a crowd that gains no more it walks on to better neighbours; then another crowd begins elsewhere,
 * until all evaluations are used. Where there are no more mounts than that, it looks at every one. Gives back the best
 * score.
 */
export function* search(bench: Bench, ask: SearchAsk): Generator<Progress, number, void> {
  const { freed, random, evaluations, watch, judged, first } = ask;
  if (countOf(freed) <= evaluations) return yield* lookAtAll(bench, ask);
  const start = bench.looked;
  const used = (): number => bench.looked - start;
  const progress = (): Progress => ({ done: used(), of: Math.max(evaluations, used()) });
  const held = (it: Pick<Case, 'fixed'>, genes: Genes): Genes =>
    genes.map((gene, i) => ((it.fixed[i] as number) >= 0 ? (it.fixed[i] as number) : gene));
  const scores = new Map<string, number>();
  /** The scores of mounts, each of which is looked at once however often it comes up. */
  const lookAt = (mounts: readonly Genes[]): number[] => {
    const keys = mounts.map((genes) => genes.join());
    const fresh = new Map(keys.flatMap((key, n) => (scores.has(key) ? [] : [[key, mounts[n] as Genes]])));
    const seen = fresh.size === 0 ? [] : bench.lookAt([...fresh.values()], watch, judged);
    [...fresh.keys()].forEach((key, n) => {
      scores.set(key, (seen[n] as Seen).score);
    });
    return keys.map((key) => scores.get(key) as number);
  };
  const drawn = (fixed: readonly number[]): Genes =>
    held(
      { fixed },
      freed.map(({ values }) => Math.floor(random() * values.length)),
    );

  const begin = (it: Case, given: readonly Genes[]): void => {
    it.crowd = [
      ...given.map((genes) => held(it, genes)),
      ...Array.from({ length: Math.max(4, CROWD - given.length) }, () => drawn(it.fixed)),
    ];
    it.scores = lookAt(it.crowd);
    it.high = Math.max(...it.scores);
    it.best = Math.max(it.best, it.high);
    it.idle = 0;
  };
  const evolve = (it: Case): void => {
    const children = it.crowd.map((_, parent) => childOf(it, parent, freed, random));
    lookAt(children).forEach((score, n) => {
      if (score < (it.scores[n] as number)) return;
      it.crowd[n] = children[n] as Genes;
      it.scores[n] = score;
    });
    const now = Math.max(...it.scores);
    it.idle = now > it.high ? 0 : it.idle + 1;
    it.high = now;
    it.best = Math.max(it.best, now);
  };
  /** One step to the best neighbour; whether there was a better one. */
  const walk = (it: Case): boolean => {
    const at = it.scores.indexOf(it.high);
    const around = neighbours(it.crowd[at] as Genes, it, freed);
    const theirs = lookAt(around);
    const high = Math.max(Number.NEGATIVE_INFINITY, ...theirs);
    if (high <= it.high) return false;
    it.crowd[at] = around[theirs.indexOf(high)] as Genes;
    it.scores[at] = high;
    it.high = high;
    it.best = Math.max(it.best, high);
    return true;
  };

  const cases = casesOf(freed).map(
    (fixed): Case => ({
      fixed,
      crowd: [],
      scores: [],
      high: Number.NEGATIVE_INFINITY,
      idle: 0,
      best: Number.NEGATIVE_INFINITY,
    }),
  );
  const best = (): number => Math.max(...cases.map((it) => it.best));
  const isOver = (): boolean => used() >= evaluations || (ask.firstThatHolds === true && best() >= 1);
  for (const it of cases) {
    begin(it, first);
    yield progress();
    if (ask.firstThatHolds === true && best() >= 1) return best();
  }
  for (let idle = 0; !isOver() && idle < ALL_SEEN; ) {
    const before = used();
    for (const it of cases) {
      if (it.idle < PATIENCE) evolve(it);
      else if (!walk(it)) begin(it, []);
    }
    idle = used() > before ? 0 : idle + 1;
    yield progress();
  }
  return best();
}
