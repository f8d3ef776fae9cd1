import { worstFirst } from '../../calc/limits/worst-first.ts';
import { inputNamed, inputs } from '../../plan/book.ts';
import type { Plan, StudySettings } from '../../plan/plan.ts';
import type { InputCell } from '../../plan/template.ts';
import { variedCell } from '../../session/studies/varied-cell.ts';
import { enterText } from '../../workbook/enter.ts';
import type { Workbook } from '../../workbook/workbook.ts';
import { Refused } from '../exit.ts';

/** What a study was asked on the command line, and of which plan. Everything asked for is refused with a sentence when it cannot be. */
export class Given {
  readonly plan: Plan;
  readonly scenario: string | null;
  readonly workbook: Workbook;
  readonly #options: ReadonlyMap<string, readonly string[]>;

  constructor(
    plan: Plan,
    scenario: string | null,
    workbook: Workbook,
    options: ReadonlyMap<string, readonly string[]>,
  ) {
    this.plan = plan;
    this.scenario = scenario;
    this.workbook = workbook;
    this.#options = options;
  }

  all(option: string): readonly string[] {
    return this.#options.get(option) ?? [];
  }

  last(option: string): string | undefined {
    return this.all(option).at(-1);
  }

  /** What the plan keeps of the study's settings. */
  settings(study: string): StudySettings['settings'] {
    return this.plan.studies.find((it) => it.study === study)?.settings ?? {};
  }

  /** The input that an option names, a number with a range; or an own cell that holds a plain number. */
  input(option: string): InputCell {
    const name = this.last(option);
    if (name === undefined) throw new Refused(`--${option} is missing; it takes the name of an input.`);
    const cell = variedCell(name, this.plan);
    if (cell !== undefined) return cell;
    if (this.plan.ownCells.some((it) => it.name === name))
      throw new Refused(`--${option}: ${name} holds no plain number, so that it cannot be varied.`);
    if (inputNamed(name) === undefined) throw new Refused(`--${option}: there is no input named ${name}.`);
    const such = inputs.find((it) => it.type === 'number' && it.usual !== undefined);
    throw new Refused(`--${option}: ${name} has no range to vary it over, as ${such?.name} has.`);
  }

  /** A value of an input, typed as a person types it; bare lengths are mm. */
  value(option: string, cell: InputCell): number | undefined {
    const text = this.last(option);
    if (text === undefined) return undefined;
    if (inputNamed(cell.name) === undefined) return this.number(option, -1e12, 1e12, false);
    const entered = enterText(cell, text, 'mm', this.plan);
    if (!entered.ok) throw new Refused(`--${option}: ${entered.why}`);
    const { value } = entered.reading;
    if (typeof value === 'number') return value;
    throw new Refused(`--${option} takes a number of ${cell.name}, not “${text}”.`);
  }

  /** The range an input is varied over: its usual one unless `--low` or `--high` say otherwise. */
  range(cell: InputCell): readonly [low: number, high: number] {
    const [least, most] = cell.usual ?? [0, 1];
    const [low, high] = [this.value('low', cell) ?? least, this.value('high', cell) ?? most];
    if (low < high) return [low, high];
    throw new Refused(
      `${cell.name} cannot be varied from ${low} to ${high}: --low must be less than --high.`,
    );
  }

  /** A plain number within bounds. */
  number(option: string, least: number, most: number, whole: boolean): number | undefined {
    const text = this.last(option);
    if (text === undefined) return undefined;
    const value = text.trim() === '' ? Number.NaN : Number(text);
    if (value >= least && value <= most && (!whole || Number.isInteger(value))) return value;
    throw new Refused(
      `--${option} cannot be “${text}”; it takes a ${whole ? 'whole ' : ''}number from ${least} to ${most}.`,
    );
  }

  /** Results that are wanted, `otherwise` when none is named. */
  results(otherwise: readonly string[]): readonly string[] {
    const asked = this.all('result');
    const known = new Set(this.workbook.names);
    for (const name of asked) {
      if (!known.has(name)) throw new Refused(`--result: there is no cell named ${name}.`);
    }
    return asked.length === 0 ? otherwise : [...new Set(asked)];
  }

  /** Limits that are wanted, `otherwise` when none is named. */
  limits(otherwise: readonly string[]): readonly string[] {
    const asked = this.all('limit');
    const known = new Set(this.workbook.limitRules().map((it) => it.name));
    for (const name of asked) {
      if (!known.has(name)) throw new Refused(`--limit: there is no limit named ${name}.`);
    }
    return asked.length === 0 ? otherwise : [...new Set(asked)];
  }

  /** The worst limit that has room to tell, and the result that it judges. */
  worst(): { readonly limit: string; readonly result: string } {
    const { limits } = this.workbook.judgement();
    const found = worstFirst(limits.filter((it) => it.verdict.room !== undefined))[0];
    return { limit: found?.name ?? 'rudder_gap', result: found?.result ?? 'rudder_gap' };
  }
}
