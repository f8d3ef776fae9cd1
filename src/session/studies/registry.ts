import { type DriversAsk, drivers } from '../../studies/drivers.ts';
import type { Evaluator } from '../../studies/evaluator.ts';
import { type MapAsk, map } from '../../studies/map/map.ts';
import { type OddsAsk, odds } from '../../studies/odds.ts';
import type { PointRange } from '../../studies/points.ts';
import type { ProposalsAsk } from '../../studies/proposals/ask.ts';
import { proposals } from '../../studies/proposals/proposals.ts';
import { widened } from '../../studies/stops.ts';
import type { Study } from '../../studies/study.ts';
import { type SweepAsk, sweep, trace } from '../../studies/sweep.ts';
import { type TurningAsk, turning } from '../../studies/turning.ts';
import { values } from '../../studies/values.ts';
import { mending } from './mending.ts';
import { mounting } from './mounting.ts';
import type { StudyBench } from './study-bench.ts';

type Run<Ask, Answer> = (bench: StudyBench, ask: Ask) => Study<Answer>;

const run = <Ask, Answer>(it: Run<Ask, Answer>): Run<Ask, Answer> => it;

/** A sweep of one scenario; `present` is looked up there. */
export interface SweepCall extends Omit<SweepAsk, 'present'> {
  readonly scenario: string | null;
}

/** The same sweep's results in other scenarios. */
export interface LinesCall extends SweepCall {
  readonly scenarios: readonly (string | null)[];
}

export interface ValuesCall {
  readonly scenario: string | null;
  readonly names: readonly string[];
}

const withPresent = ({ evaluatorOf }: StudyBench, { scenario, ...ask }: SweepCall): SweepAsk => ({
  ...ask,
  present: evaluatorOf(scenario).evaluate(new Map()).value(ask.input),
});

/** An evaluator for a sweep of one scenario. */
const sweeping = (bench: StudyBench, scenario: string | null, ask: SweepAsk): Study<Evaluator> => {
  const { input: name, results, whole, only } = ask;
  const range: PointRange = only === undefined ? { name, ...widened(ask), whole } : { name, values: only };
  return bench.oneAtATime(scenario, { inputs: [name], results }, [range]);
};

/** Every study by the name it is asked by, on the page and on the command line. Asks and answers are plain data. */
export const STUDIES = {
  sweep: run(function* (bench, call: SweepCall) {
    const ask = withPresent(bench, call);
    return yield* sweep(yield* sweeping(bench, call.scenario, ask), ask);
  }),
  lines: run(function* (bench, { scenarios, ...call }: LinesCall) {
    const ask = withPresent(bench, call);
    const evaluators: Evaluator[] = [];
    for (const scenario of scenarios) evaluators.push(yield* sweeping(bench, scenario, ask));
    return yield* trace(evaluators, ask);
  }),
  remedies: run(mending),
  values: run((bench, { scenario, names }: ValuesCall) => values(bench.evaluatorOf(scenario), names)),
  map: run((bench, ask: MapAsk) => map(bench.points, ask)),
  drivers: run((bench, ask: DriversAsk) => drivers(bench.points, ask)),
  turning: run((bench, ask: TurningAsk) => turning(bench.points, ask)),
  odds: run((bench, ask: OddsAsk) => odds(bench.points, ask)),
  mount: run(mounting),
  proposals: run((bench, ask: ProposalsAsk) => proposals(bench.points, ask)),
} as const;

export type StudyName = keyof typeof STUDIES;
export type AskOf<N extends StudyName> = Parameters<(typeof STUDIES)[N]>[1];
export type AnswerOf<N extends StudyName> =
  ReturnType<(typeof STUDIES)[N]> extends Study<infer Answer> ? Answer : never;

/** A question as plain data. The same study and ask are the same question. */
export interface StudyCall<N extends StudyName = StudyName> {
  readonly study: N;
  readonly ask: AskOf<N>;
  /** Goes before studies that can wait. */
  readonly urgent?: boolean;
  /** What makes it the same question when the plan has changed; study and ask when left out. */
  readonly key?: string;
}

/** Starts the study that a call asks for. */
export const start = <N extends StudyName>(bench: StudyBench, { study, ask }: StudyCall<N>) =>
  (STUDIES[study] as unknown as Run<AskOf<N>, AnswerOf<N>>)(bench, ask);

export const keyOf = ({ study, ask, key = JSON.stringify(ask) }: StudyCall): string => `${study} ${key}`;
