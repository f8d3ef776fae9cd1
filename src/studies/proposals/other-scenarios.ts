import type { Evaluators, PointRange } from '../points.ts';
import type { Study } from '../study.ts';
import { inputsOf, type Proposals, type ProposalsAsk } from './ask.ts';
import { Bench } from './bench.ts';
import { MountOdds } from './mount-odds.ts';

/** The ranges, wide enough to hold the values too. */
const rangesWith = (ranges: readonly PointRange[], values: readonly number[]): PointRange[] =>
  ranges.map((it, n) => {
    const value = values[n] as number;
    return 'low' in it ? { ...it, low: Math.min(it.low, value), high: Math.max(it.high, value) } : it;
  });

/** Where the owner's other scenarios stand with what they set. */
export function* scenariosAt(
  evaluators: Evaluators,
  ask: ProposalsAsk,
  ranges: readonly PointRange[],
): Study<Proposals['scenarios']> {
  const found: Proposals['scenarios'][number][] = [];
  for (const { name, values } of ask.scenarios) {
    if (values.some((it) => Number.isNaN(it))) continue;
    const asked = { inputs: inputsOf(ask), results: ask.bolts };
    const evaluator = yield* evaluators.points(name, asked, rangesWith(ranges, values));
    const mount = new Bench(ask, evaluator).mountAt(values);
    if (mount !== undefined) found.push({ name, mount });
  }
  return found;
}

/** The same with the odds of each, by what may be off in that scenario. */
export function* scenarioOdds(
  evaluators: Evaluators,
  ask: ProposalsAsk,
  ranges: readonly PointRange[],
  plain: Proposals['scenarios'],
): Study<Proposals['scenarios']> {
  const found: Proposals['scenarios'][number][] = [];
  for (const { name, mount } of plain) {
    const varied = ask.scenarios.find((it) => it.name === name)?.varied;
    const odds =
      ask.readings === undefined || varied === undefined
        ? undefined
        : yield* MountOdds.over(
            evaluators,
            { ...ask, scenario: name },
            { ...ask.readings, varied },
            rangesWith(ranges, mount.values),
          );
    found.push(
      odds === undefined
        ? { name, mount }
        : { name, mount: { ...mount, odds: yield* odds.holdsAt(mount.values) } },
    );
  }
  return found;
}
