import { shares } from '../../src/studies/drivers/shares.ts';
import { Meter } from '../../src/studies/meter.ts';
import { finish } from '../../src/studies/study.ts';
import { errorModel } from '../../src/studies/uncertain/error-model.ts';
import { oakley, sharesOfOakley } from '../studies/oakley.ts';
import { plainPoints } from '../studies/plain-points.ts';
import { borehole, type Case, ishigami, sharesOfG, sobolG } from '../studies/published.ts';
import { CERTAINTY, coverage, seeds } from './coverage.ts';
import type { SoakLine } from './part.ts';

function* sharesOf(
  name: string,
  of: Case,
  alone: readonly number[],
  total: readonly number[],
  within = 0,
): Iterable<SoakLine> {
  const factors = of.errors.map((_, i) => i);
  const inputs = of.errors.map((it) => it.name);
  const evaluator = plainPoints([of.limit]).at({ inputs, results: [] });
  const model = errorModel(of.errors, 0);
  const runs = seeds.map(
    (seed) =>
      finish(
        shares(
          evaluator,
          model,
          { factors, repeats: 16, points: 128, seed, certainty: CERTAINTY },
          new Meter(),
        ),
      )[0] ?? [],
  );
  for (const [i, input] of inputs.entries()) {
    for (const [kind, truth] of [
      ['alone', alone[i] ?? 0],
      ['total', total[i] ?? 0],
    ] as const) {
      const found = runs.flatMap((it) => (it[i] === undefined ? [] : [it[i][kind]]));
      yield coverage(`${name}: share of ${input} ${kind}`, truth, found, within);
    }
  }
}

/** Shares of variance against closed forms. */
export function* soakShares(): Iterable<SoakLine> {
  yield* sharesOf(
    'Ishigami’s function',
    ishigami,
    [0.313905191147811, 0.442411144790041, 0],
    [0.557588855209959, 0.442411144790041, 0.243683664062148],
  );
  const weights = [0, 1, 4.5, 9, 99, 99, 99, 99];
  const truth = sharesOfG(weights);
  yield* sharesOf('Sobol’s function g', sobolG(weights), truth.alone, truth.total);
  const six = [78, 12, 0.5, 2, 97, 33];
  const others = sharesOfG(six);
  yield* sharesOf('g of six weights', sobolG(six), others.alone, others.total);
  const fifteen = sharesOfOakley();
  yield* sharesOf('Oakley and O’Hagan’s function', oakley, fifteen.alone, fifteen.total);
  // otbenchmark gives two figures.
  yield* sharesOf(
    'flow through a borehole',
    borehole,
    [0.66, 0, 0, 0.09, 0, 0.09, 0.09, 0.02],
    [0.69, 0, 0, 0.11, 0, 0.11, 0.1, 0.02],
    0.005,
  );
}
