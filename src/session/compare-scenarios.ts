import { byWorst } from '../calc/limits/worst-first.ts';
import { inputNamed } from '../plan/book.ts';
import { compare } from '../plan/compare.ts';
import type { Plan, Value } from '../plan/plan.ts';
import type { InputCell } from '../plan/template.ts';
import type { LimitAnswer } from '../workbook/judged.ts';
import type { ByScenario } from './scenario-answers.ts';

/** One input in one column. */
export interface ColumnValue {
  readonly value: Value;
  /** Why there is no value. */
  readonly why: string | undefined;
  /** Whether the scenario has it as its own rather than the base's. */
  readonly own: boolean;
}

export interface InputRow {
  readonly cell: InputCell;
  /** By column; the base values go by null. */
  readonly values: ReadonlyMap<string | null, ColumnValue>;
  readonly differs: boolean;
}

export interface LimitRow {
  readonly name: string;
  /** By column; absent while a scenario is being worked out. */
  readonly answers: ReadonlyMap<string | null, LimitAnswer>;
  readonly differs: boolean;
}

export interface ScenarioTable {
  readonly columns: readonly (string | null)[];
  readonly inputs: readonly InputRow[];
  readonly limits: readonly LimitRow[];
}

/** Numbers closer than this, as a share of the larger, are the same: the rest is arithmetic noise. */
const SAME_WITHIN = 1e-9;

const same = (a: number | undefined, b: number | undefined): boolean =>
  a === b ||
  (a !== undefined && b !== undefined && Math.abs(a - b) <= SAME_WITHIN * Math.max(Math.abs(a), Math.abs(b)));

const sameLimit = (a: LimitAnswer, b: LimitAnswer): boolean =>
  a.verdict.state === b.verdict.state && same(a.value, b.value) && same(a.verdict.room, b.verdict.room);

/** A limit as it stands where it is worst. */
const worstOf = ({ answers }: LimitRow): LimitAnswer | undefined => [...answers.values()].sort(byWorst)[0];

function byWorstColumn(a: LimitRow, b: LimitRow): number {
  const [first, second] = [worstOf(a), worstOf(b)];
  return first === undefined || second === undefined ? 0 : byWorst(first, second);
}

function inputRows(plan: Plan, answers: ByScenario): InputRow[] {
  const { scenarios, inputs } = compare(plan);
  return inputs.flatMap(({ name, differs, readings, own }) => {
    const cell = inputNamed(name);
    if (cell === undefined || (cell.kind !== 'choice' && !own.includes(true))) return [];
    const values = scenarios.map((column, i) => {
      const answer = answers.get(column)?.answer(name);
      const reading = readings[i];
      // What was entered is known before the scenario is worked out; only a formula has to wait.
      const value = (reading?.formula === undefined ? reading?.value : answer?.value) ?? null;
      return [column, { value, why: answer?.why, own: own[i] === true }] as const;
    });
    return [{ cell, values: new Map(values), differs }];
  });
}

function limitRows(columns: readonly (string | null)[], answers: ByScenario): LimitRow[] {
  const names = new Set(columns.flatMap((column) => [...(answers.get(column)?.limits.keys() ?? [])]));
  const rows = [...names].map((name): LimitRow => {
    const known = new Map<string | null, LimitAnswer>();
    for (const column of columns) {
      const limit = answers.get(column)?.limits.get(name);
      if (limit !== undefined) known.set(column, limit);
    }
    const [first, ...others] = known.values();
    return {
      name,
      answers: known,
      differs: first !== undefined && others.some((it) => !sameLimit(first, it)),
    };
  });
  return rows
    .filter((row) => [...row.answers.values()].some((it) => it.verdict.state !== 'does not apply'))
    .toSorted(byWorstColumn);
}

/**
 * Every scenario of a plan beside its base values: the Mount choices and any other input that some scenario has as its
 * own, differences first; and the limits, worst first. A limit that applies in no column is left out.
 */
export function compareScenarios(plan: Plan, answers: ByScenario): ScenarioTable {
  const columns = [null, ...plan.scenarios.map((it) => it.name)];
  return { columns, inputs: inputRows(plan, answers), limits: limitRows(columns, answers) };
}
