import { Meter } from '../../src/studies/meter.ts';
import { type DesignPoint, designPoints } from '../../src/studies/odds/design-points.ts';
import { rare } from '../../src/studies/odds/rare.ts';
import { ScoredRoom } from '../../src/studies/odds/rooms-at.ts';
import { sampled } from '../../src/studies/odds/sampled.ts';
import { odds } from '../../src/studies/odds.ts';
import { finish } from '../../src/studies/study.ts';
import { errorModel } from '../../src/studies/uncertain/error-model.ts';
import { plainPoints } from '../studies/plain-points.ts';
import {
  axialBar,
  type Case,
  even,
  fourBranches,
  frame,
  lessLoad,
  normal,
  twoPoints,
} from '../studies/published.ts';
import { reliability } from '../studies/reliability.ts';
import { CERTAINTY, coverage, SEEDS, seeds } from './coverage.ts';
import type { SoakLine } from './part.ts';

const evaluatorOf = (of: Case) =>
  plainPoints([of.limit]).at({ inputs: of.errors.map((it) => it.name), results: [] });

function bySample(name: string, of: Case, truth: number): SoakLine {
  const [evaluator, model] = [evaluatorOf(of), errorModel(of.errors, 0)];
  const order = of.errors.map((_, i) => i);
  const found = seeds.map(
    (seed) =>
      finish(
        sampled(
          evaluator,
          model,
          order,
          { repeats: 16, points: 1024, seed, certainty: CERTAINTY },
          new Meter(),
        ),
      ).together.fails,
  );
  return coverage(`${name}, sampled`, truth, found);
}

function* byDesignPoints(
  name: string,
  of: Case,
  truth: number,
  distances?: readonly number[],
): Iterable<SoakLine> {
  const [evaluator, model] = [evaluatorOf(of), errorModel(of.errors, 0)];
  const factors = of.errors.map((_, i) => i);
  const runs = seeds.map((seed) => {
    const room = new ScoredRoom(evaluator, model, 0, factors, new Meter());
    const points: readonly DesignPoint[] = finish(designPoints(room, seed));
    const ask = { repeats: 16, points: 1024, seed, certainty: CERTAINTY };
    const scores = points.map((it) => it.scores);
    return { points, fails: finish(rare(evaluator, model, scores, ask, new Meter())).fails };
  });
  yield coverage(
    `${name}, about its design points`,
    truth,
    runs.map((it) => it.fails),
  );
  if (distances === undefined) return;
  const all = runs.filter(
    ({ points }) =>
      points.length === distances.length &&
      points.every((it, i) => Math.abs(it.distance - (distances[i] ?? 0)) < 1e-6),
  ).length;
  yield {
    name: `${name}, design points`,
    says: `${all} of ${SEEDS} seeds find all ${distances.length}, and no other`,
    ok: all === SEEDS,
  };
}

/** As the owner is told: the sampled chance, or the one about the design points where there is one. */
function asTold(name: string, of: Case, truth: number, share = 0): SoakLine {
  const found = seeds.map((seed) => {
    const ask = { scenario: null, errors: of.errors, share, seed, repeats: 16, points: 1024 };
    const [only] = finish(odds(plainPoints([of.limit]), { ...ask, certainty: CERTAINTY })).limits;
    return (
      only?.rare?.fails ?? only?.sampled.fails ?? { value: Number.NaN, low: Number.NaN, high: Number.NaN }
    );
  });
  return coverage(name, truth, found);
}

/** An even error and a normal one, their sum below a bound out in the tail: by integration over the even one. */
function mixedTail(bound: number): number {
  // ∫ Φ(bound − x) dx/2 over −1 to 1, by Simpson's rule with the tail of the normal law as a continued fraction.
  const above = (z: number): number => {
    let fraction = z;
    for (let k = 200; k > 0; k--) fraction = z + k / fraction;
    return Math.exp(-0.5 * z * z) / (Math.sqrt(2 * Math.PI) * fraction);
  };
  const steps = 2000;
  let sum = 0;
  for (let i = 0; i <= steps; i++) {
    const x = -1 + (2 * i) / steps;
    sum += above(x - bound) * (i === 0 || i === steps ? 1 : i % 2 === 1 ? 4 : 2);
  }
  return (sum * 2) / steps / 3 / 2;
}

/** Chances against published ones and closed forms. */
export function* soakChances(): Iterable<SoakLine> {
  yield bySample('resistance 4 less load 2', lessLoad(4), 0.0786496035251426);
  yield bySample('axial bar', axialBar, 0.0291981946);
  yield bySample('four branches', fourBranches, 0.00222279507);
  yield bySample('two design points', twoPoints, 0.0030163);
  yield* byDesignPoints('resistance 7 less load 2', lessLoad(7), 2.03476e-4, [Math.sqrt(12.5)]);
  yield* byDesignPoints('four branches', fourBranches, 0.00222279507, [3, 3, 3.5, 3.5]);
  yield* byDesignPoints('two design points', twoPoints, 0.0030163);
  yield* byDesignPoints('axial bar', axialBar, 0.0291981946);
  const corner: Case = {
    limit: { name: 'room', of: ({ a = 0, b = 0, c = 0, d = 0 }) => a + b + c + d, low: 0.2 },
    errors: ['a', 'b', 'c', 'd'].map((name) => even(name, 0, 1)),
  };
  yield* byDesignPoints('a corner of four even errors', corner, 0.2 ** 4 / 24);
  const mixed: Case = {
    limit: { name: 'room', of: ({ x = 0, z = 0 }) => x + z, low: -5 },
    errors: [even('x', -1, 1), normal('z', 0, 1)],
  };
  yield* byDesignPoints('an even and a normal error', mixed, mixedTail(-5));
  yield asTold('a frame with shared errors', frame, 0.00418394, 0.5);
  for (const of of reliability) yield asTold(`reliability case ${of.name}`, of, of.truth);
}
