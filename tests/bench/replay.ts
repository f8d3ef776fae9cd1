import { functionNamed } from '../../src/calc/catalogue.ts';
import { seeded } from '../../src/calc/uncertainty/seeded.ts';
import { inputs, results } from '../../src/plan/book.ts';
import type { Value } from '../../src/plan/plan.ts';
import { contentsOf, labelOf } from '../../src/workbook/contents.ts';
import { type Content, Engine } from '../../src/workbook/engine.ts';
import { readFormula } from '../../src/workbook/formula.ts';
import { judgeRules } from '../../src/workbook/judged.ts';
import { limitRules } from '../../src/workbook/limit-rule.ts';
import { type Lane, write } from '../../src/workbook/replay/lanes.ts';
import { link } from '../../src/workbook/replay/link.ts';
import type { Program } from '../../src/workbook/replay/program.ts';
import { batchOf, type Column, type Replay } from '../../src/workbook/replay/replay.ts';
import { replayOf } from '../../src/workbook/replay/replay-of.ts';
import { demoPlan } from '../studies/plan-points.ts';
import { formulaCells, formulaInputs, plainFormulas } from './formula-model.ts';
import { interleaved, type Task } from './interleaved.ts';
import { type PlainAnswers, type PlainInputs, plainPlanOf } from './plain-plan.ts';

/** Points in one batch, and how far each number strays from the demo plan's, as a share of it. */
const POINTS = 256;
const SPREAD = 0.02;

const names = inputs.map(({ name }) => name);
const limits = limitRules();

function demoContents(): Map<string, Content> {
  return contentsOf(demoPlan(), null);
}

/** Points about the demo plan with every input changed; flags and words now and then, counts by one. */
function demoPoints(contents: ReadonlyMap<string, Content>): Map<string, Value>[] {
  const random = seeded(7);
  return Array.from(
    { length: POINTS },
    () =>
      new Map(
        inputs.map(({ name, type, only, min, words }): [string, Value] => {
          const base = contents.get(name) as Value;
          if (type === 'flag') return [name, random() < 0.1 ? !base : base];
          if (type === 'word') return [name, random() < 0.1 ? (words?.[0] ?? base) : base];
          if (only !== undefined) return [name, only[Math.floor(random() * only.length)] ?? base];
          if (type === 'whole') {
            return [name, Math.max(min ?? 0, Number(base) + Math.floor(random() * 3) - 1)];
          }
          return [name, Number(base) * (1 + SPREAD * (2 * random() - 1))];
        }),
      ),
  );
}

const columnsOf = (points: readonly ReadonlyMap<string, Value>[], over: readonly string[]): Column[] =>
  over.map((name) => {
    const values = points.map((point) => point.get(name));
    return typeof values[0] === 'number'
      ? Float64Array.from(values as number[])
      : (values as unknown as Column);
  });

function replayFor(engine: Engine, varied: readonly string[], asked: Replay['asked']): Replay {
  const replayed = replayOf(engine, varied, asked);
  if (!replayed.ok) throw new Error(replayed.why);
  return replayed.replay;
}

const batchTask = (replay: Replay, columns: readonly Column[], count: number): Task => {
  const into = batchOf(replay.asked, count);
  return { evaluations: count, run: () => void replay.evaluateMany(columns, count, into) };
};

/** Only the library's steps of a program, on slots filled by a run of the whole. */
function libraryTask(program: Program, columns: readonly Column[]): Task {
  // Every slot wanted, so that each keeps a lane of its own.
  const wanted = Array.from({ length: program.slots }, (_, slot): [string, number] => [String(slot), slot]);
  const { size, lanes, kernels, run } = link({ ...program, wanted });
  program.inputs.forEach(({ slot }, i) => {
    for (let k = 0; k < size; k++) write(lanes[slot] as Lane, k, columns[i]?.[k] ?? null);
  });
  run(size);
  const library = kernels.filter((_, i) => functionNamed(program.steps[i]?.op ?? '') !== undefined);
  return {
    evaluations: size,
    run: () => {
      for (const kernel of library) kernel(size);
    },
  };
}

const round = (value: number, places = 3): number => Number(value.toFixed(places));

/** The demo plan whole, every input changed: replay, engine, and the plan written out plainly. Microseconds and ratios. */
export function wholePlan(): Record<string, number> {
  const contents = demoContents();
  const engine = new Engine(contents, labelOf);
  const points = demoPoints(contents);
  const columns = columnsOf(points, names);
  const asked = { results: results.map(({ name }) => name), limits };
  const replay = replayFor(engine, names, asked);
  const resultsAlone = replayFor(engine, names, { ...asked, limits: [] });

  const plainPlan = plainPlanOf(engine);
  const plainInputs = points.map((point) => Object.fromEntries(point) as unknown as PlainInputs);
  const answers: PlainAnswers = {
    results: new Float64Array(results.length),
    states: new Array<string>(limits.length).fill(''),
    rooms: new Float64Array(limits.length),
    ratios: new Float64Array(limits.length),
  };
  const batch = replay.evaluateMany(columns, POINTS);
  for (const [i, point] of plainInputs.entries()) {
    plainPlan(point, answers);
    limits.forEach(({ name }, k) => {
      const [there, here] = [answers.rooms[k] ?? Number.NaN, batch.limits[k]?.room[i] ?? Number.NaN];
      if (Object.is(there, here) || Math.abs(there - here) <= 1e-9 * Math.max(1, Math.abs(there))) return;
      throw new Error(`The room of ${name} is ${there} written out and ${here} by the replay.`);
    });
  }

  let next = 0;
  const took = interleaved({
    engine: {
      evaluations: 1,
      run: () => {
        engine.set(points[next++ % points.length] ?? new Map());
        judgeRules((name) => engine.answer(name), limits);
      },
    },
    replay: batchTask(replay, columns, POINTS),
    replay_results: batchTask(resultsAlone, columns, POINTS),
    replay_one: {
      evaluations: 64,
      run: () => {
        for (let i = 0; i < 64; i++) replay.evaluate(points[i] ?? new Map());
      },
    },
    plain: {
      evaluations: POINTS,
      run: () => {
        for (const point of plainInputs) plainPlan(point, answers);
      },
    },
    library: libraryTask(replay.program, columns),
  });
  engine.destroy();
  return {
    engine_us: round(took.engine),
    replay_us: round(took.replay),
    replay_results_us: round(took.replay_results),
    replay_one_at_a_time_us: round(took.replay_one),
    plain_us: round(took.plain),
    replay_per_engine: round(took.engine / took.replay, 1),
    plain_per_replay: round(took.replay / took.plain),
    library_share: round(took.library / took.replay),
  };
}

/** A model of 150 formulas without library functions: replay against the same written by hand. */
export function formulasOnly(): Record<string, number> {
  const random = seeded(11);
  const points = Array.from(
    { length: POINTS },
    () => new Map(formulaInputs.map((name): [string, Value] => [name, 1 + 99 * random()])),
  );
  const contents = new Map<string, Content>(points[0]);
  for (const [name, text] of formulaCells) {
    const read = readFormula(text, (it) => formulaCells.has(it) || contents.has(it));
    if ('why' in read) throw new Error(read.why);
    contents.set(name, { formula: read.text });
  }
  const engine = new Engine(contents, (name) => name);
  const replay = replayFor(engine, formulaInputs, { results: [...formulaCells.keys()], limits: [] });
  const columns = columnsOf(points, formulaInputs);
  const rows = points.map((point) => Float64Array.from(point.values(), Number));
  const to = new Float64Array(formulaCells.size);
  const linked = link(replay.program);
  let next = 0;
  const took = interleaved({
    engine: { evaluations: 1, run: () => void engine.set(points[next++ % points.length] ?? new Map()) },
    replay: batchTask(replay, columns, POINTS),
    unrounded: { evaluations: linked.size, run: () => linked.run(linked.size) },
    plain: {
      evaluations: POINTS,
      run: () => {
        for (const row of rows) plainFormulas(row, to);
      },
    },
  });
  engine.destroy();
  return {
    engine_us: round(took.engine),
    replay_us: round(took.replay),
    replay_unrounded_us: round(took.unrounded),
    plain_us: round(took.plain),
    replay_per_engine: round(took.engine / took.replay, 1),
    plain_per_replay: round(took.replay / took.plain),
    plain_per_replay_unrounded: round(took.unrounded / took.plain),
    steps: replay.program.steps.length,
  };
}
