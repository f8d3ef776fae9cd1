import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { openPlan } from '../../src/plan/file/open-plan.ts';
import type { Plan } from '../../src/plan/plan.ts';
import type { Evaluators } from '../../src/studies/points.ts';
import { contentsOf, labelOf } from '../../src/workbook/contents.ts';
import { Engine } from '../../src/workbook/engine.ts';
import { limitRules } from '../../src/workbook/limit-rule.ts';
import { replayOf } from '../../src/workbook/replay/replay-of.ts';
import { atOnce } from './at-once.ts';

export const demoText = (name = 'start'): string =>
  readFileSync(resolve('demo-data', `${name}.plan.json`), 'utf8');

export function demoPlan(name = 'start'): Plan {
  const opened = openPlan(demoText(name));
  if (!opened.ok) throw new Error(opened.why);
  return opened.plan;
}

/** The replay of a plan, without the proof that precedes it elsewhere; inputs that clash are not looked for. */
export function planPoints(plan: Plan): Evaluators {
  const engines = new Map<string | null, Engine>();
  return {
    points(scenario, ask) {
      const engine = engines.get(scenario) ?? new Engine(contentsOf(plan, scenario), labelOf);
      engines.set(scenario, engine);
      const rules = limitRules(plan.limits);
      const limits =
        ask.limits === undefined
          ? rules
          : ask.limits.flatMap((name) => rules.filter((it) => it.name === name));
      const replayed = replayOf(engine, ask.inputs, { results: ask.results, limits });
      if (!replayed.ok) throw new Error(replayed.why);
      const { replay } = replayed;
      const order = replay.program.inputs.map((it) => ask.inputs.indexOf(it.name));
      return atOnce({
        inputs: ask.inputs,
        results: ask.results,
        limits: limits.map((it) => it.name),
        road: { by: 'replay' },
        evaluateMany(columns, count) {
          const batch = replay.evaluateMany(
            order.map((i) => columns[i] ?? []),
            count,
          );
          return { count, results: batch.results, limits: batch.limits, refused: new Uint8Array(count) };
        },
      });
    },
  };
}
