import { normalQuantile } from '../../src/calc/uncertainty/normal.ts';
import { seeded } from '../../src/calc/uncertainty/seeded.ts';
import { newPlan } from '../../src/plan/new-plan.ts';
import type { Plan, Reading } from '../../src/plan/plan.ts';
import { oddsAsk } from '../../src/session/studies/asks.ts';
import { benchOf } from '../../src/session/studies/bench-of.ts';
import { ReplayEvaluators } from '../../src/session/studies/evaluators.ts';
import { Meter } from '../../src/studies/meter.ts';
import { sampled } from '../../src/studies/odds/sampled.ts';
import { finish } from '../../src/studies/study.ts';
import { errorModel } from '../../src/studies/uncertain/error-model.ts';
import { furthest } from '../../src/studies/uncertain/reading-error.ts';
import { Workbook } from '../../src/workbook/workbook.ts';
import { readingsOf } from '../calc/survey/known-boat.ts';
import type { SoakLine } from './part.ts';

const SURVEYS = 60;
/** Of 60 intervals at 95 %, more than 9 miss in fewer than one long run in 1,000, fewer than 1 in one of 20 (binomial law). */
const MOST_MISSES = 9;

const RAKE = -9;
const [TRIM, LIST, SPAN] = [0.6, 1.1, 8000];
/** The boat's own rudder: its edge's x at two heights. */
const [HEAD, FOOT] = [
  [40, -100],
  [62, -1200],
] as const;
const FOLLOWED = ['transom_rake', 'rudder_overhang', 'rudder_overhang_foot'] as const;
const TRUTH = [RAKE, HEAD[0], FOOT[0]] as const;

/** A survey of a boat whose shape is known, read with errors, that its plan follows. */
function surveyed(rows: number, random: () => number): Plan {
  const off = (by: number): number => by * (2 * random() - 1);
  const along = (from: number, to: number): number[] =>
    Array.from({ length: rows }, (_, i) => from + ((to - from) * i) / (rows - 1));
  const noisy = (table: readonly number[][]): number[][] =>
    table.map(([z = 0, x = 0]) => [z, x + 2 * normalQuantile(random())]);
  const face = along(80, 850).map((z) => [z * Math.tan((RAKE * Math.PI) / 180), z] as const);
  const slant = (FOOT[0] - HEAD[0]) / (FOOT[1] - HEAD[1]);
  const edge = along(-150, -1150).map((z) => [HEAD[0] + (z - HEAD[1]) * slant, z] as const);
  const plan = newPlan('Known');
  const read = (value: number, offBy: number): Reading => ({ value, offBy, origin: 'reading' });
  const follow = (from: string): Reading => ({ value: null, formula: `=${from}`, origin: 'reading' });
  const inputs = new Map(plan.inputs)
    .set('list_reading', read(LIST + off(0.2), 0.2))
    .set('trim_mark_stern', read(SPAN * Math.tan((TRIM * Math.PI) / 180) + off(10), 10))
    .set('trim_mark_forward', read(off(10), 10))
    .set('trim_mark_span', read(SPAN + off(50), 50))
    .set('tape_zero_height', read(off(2), 2))
    .set('rudder_line_aft', read(off(2), 2))
    .set('main_rudder_head', read(HEAD[1], 0))
    .set('main_rudder_foot', read(FOOT[1], 0))
    .set('transom_rake', follow('survey_rake'))
    .set('rudder_overhang', follow('survey_overhang_head'))
    .set('rudder_overhang_foot', follow('survey_overhang_foot'));
  const columns = ['height', 'distance'];
  const table = (name: string, places: readonly (readonly [number, number])[]) => ({
    name,
    columns,
    rows: noisy(readingsOf(places, 620, 0, TRIM, LIST)),
  });
  return { ...plan, inputs, tables: [table('transom_readings', face), table('rudder_readings', edge)] };
}

/** Where Odds says that each followed input lies with 95 %. */
function intervals(workbook: Workbook, plan: Plan) {
  const bench = benchOf(workbook, new ReplayEvaluators(workbook), plan);
  const ask = oddsAsk(plan, null, {});
  const errors = ask.errors.map((it) => ({
    name: it.name,
    low: it.value - furthest(it),
    high: it.value + furthest(it),
  }));
  const names = errors.map((it) => it.name);
  const asked = { inputs: names, results: [...FOLLOWED], limits: ['rudder_gap'] };
  const evaluator = finish(bench.points.points(null, asked, errors));
  const model = errorModel(ask.errors, 0);
  const order = model.factors.map((_, i) => i);
  return finish(sampled(evaluator, model, order, { ...ask, repeats: 4, points: 512 }, new Meter())).results;
}

/** Surveys of a known boat through the workbook's own formulas: how often the truth lies where Odds says. */
export function* soakSurvey(): Iterable<SoakLine> {
  const workbook = new Workbook(newPlan('Known'), null);
  for (const rows of [4, 6, 8]) {
    const random = seeded(100 + rows);
    const missed = FOLLOWED.map(() => 0);
    for (let n = 0; n < SURVEYS; n++) {
      const found = intervals(workbook, surveyed(rows, random));
      for (const [i, truth] of TRUTH.entries()) {
        const { low = 0, high = 0 } = found[i] ?? {};
        if (!(low <= truth && truth <= high)) missed[i] = (missed[i] ?? 0) + 1;
      }
    }
    for (const [i, name] of FOLLOWED.entries()) {
      yield {
        name: `${name} surveyed with ${rows} rows`,
        says: `${SURVEYS - (missed[i] ?? 0)} of ${SURVEYS} intervals hold ${TRUTH[i]}`,
        ok: (missed[i] ?? 0) <= MOST_MISSES,
      };
    }
  }
}
