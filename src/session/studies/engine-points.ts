import { STATES } from '../../calc/limits/states.ts';
import { inputNamed } from '../../plan/book.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Column, PointEvaluator } from '../../studies/points.ts';
import type { Content } from '../../workbook/engine.ts';
import { judgedNumber } from '../../workbook/limit-rule.ts';
import type { Workbook } from '../../workbook/workbook.ts';
import { type Buffers, blank, buffersFor, pointsIn } from './buffers.ts';
import { refusing } from './refusing.ts';

interface Asked {
  readonly inputs: readonly string[];
  readonly results: readonly string[];
  readonly limits: readonly string[];
}

/** Answers points one after the other from the formula engine, for what the replay cannot take. */
export function enginePoints(
  workbook: Workbook,
  plan: Plan,
  scenario: string | null,
  { inputs, results, limits }: Asked,
): PointEvaluator {
  workbook.show(plan, scenario);
  const present = new Map(workbook.names.map((name) => [name, workbook.answer(name).value]));
  const refuse = refusing(inputs, (name) => present.get(name) ?? null);
  const isFlag = inputs.map((name) => inputNamed(name)?.type === 'flag');
  let buffers: Buffers = buffersFor(results.length, limits.length, 0);

  const put = (columns: readonly Column[], i: number): void => {
    const contents = new Map<string, Content>();
    inputs.forEach((name, n) => {
      const value = columns[n]?.[i] ?? null;
      contents.set(name, isFlag[n] === true && value !== null ? Boolean(value) : value);
    });
    workbook.show(plan, scenario, contents);
    results.forEach((name, n) => {
      (buffers.results[n] as Float64Array)[i] = judgedNumber(workbook.answer(name).value) ?? Number.NaN;
    });
    const judged = new Map(workbook.judgement().limits.map((it) => [it.name, it.verdict]));
    limits.forEach((name, n) => {
      const into = buffers.limits[n];
      const verdict = judged.get(name);
      if (into === undefined) return;
      into.state[i] = STATES.indexOf(verdict?.state ?? 'no answer');
      into.room[i] = verdict?.room ?? Number.NaN;
      into.ratio[i] = verdict?.ratio ?? Number.NaN;
    });
  };

  return {
    inputs,
    results,
    limits,
    evaluateMany(columns, count) {
      if (buffers.refused.length < count) buffers = buffersFor(results.length, limits.length, count);
      refuse(columns, count, buffers.refused);
      for (let i = 0; i < count; i++) if (buffers.refused[i] === 0) put(columns, i);
      blank(buffers, count);
      workbook.show(plan, scenario);
      return pointsIn(buffers, count);
    },
  };
}
