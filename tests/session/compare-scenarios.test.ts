import { afterEach, describe, expect, it } from 'vitest';
import type { Edited } from '../../src/plan/edit.ts';
import { deleteScenario, keepScenario, setApart, setReading, switchTo } from '../../src/plan/edit.ts';
import { newPlan } from '../../src/plan/new-plan.ts';
import { type Plan, readingOf, type Value } from '../../src/plan/plan.ts';
import { compareScenarios } from '../../src/session/compare-scenarios.ts';
import { ScenarioAnswers } from '../../src/session/scenario-answers.ts';
import { Workbook } from '../../src/workbook/workbook.ts';

const must = (edited: Edited): Plan => {
  if (!edited.ok) throw new Error(edited.why);
  return edited.plan;
};

const withValue = (plan: Plan, name: string, value: Value): Plan => {
  const before = readingOf(plan, name);
  if (before === undefined) throw new Error(name);
  return must(setReading(plan, name, { ...before, value }));
};

const threeAndFour = (): Plan => {
  const three = withValue(must(keepScenario(newPlan('Test'), 'Three')), 'shim_count', 3);
  return withValue(must(keepScenario(three, 'Four')), 'shim_count', 4);
};

/** Work that waits until it is asked to run. */
const queue = () => {
  const waiting: (() => void)[] = [];
  return {
    later: (work: () => void) => {
      waiting.push(work);
      return () => waiting.splice(waiting.indexOf(work), 1);
    },
    runOne: () => waiting.shift()?.(),
    runAll: () => {
      while (waiting.length > 0) waiting.shift()?.();
    },
    size: () => waiting.length,
  };
};

let made: ScenarioAnswers[] = [];
const answersFor = (later: ReturnType<typeof queue>['later']): ScenarioAnswers => {
  const it = new ScenarioAnswers((plan, scenario) => new Workbook(plan, scenario), later);
  made.push(it);
  return it;
};

afterEach(() => {
  for (const it of made) it.stop();
  made = [];
});

describe('ScenarioAnswers', () => {
  it('works out one scenario at a time, the one being looked at first', () => {
    const idle = queue();
    const answers = answersFor(idle.later);
    answers.show(threeAndFour());
    expect(answers.answers.size).toBe(0);
    expect(answers.waiting).toBe(3);
    idle.runOne();
    expect([...answers.answers.keys()]).toEqual(['Four']);
    idle.runAll();
    expect(answers.waiting).toBe(0);
    expect(idle.size()).toBe(0);
  });

  it('answers each scenario as the workbook does on its own', () => {
    const idle = queue();
    const answers = answersFor(idle.later);
    answers.show(threeAndFour());
    idle.runAll();
    // The figures of the case in the model page: 44.7009 with three shims, 56.8860 with four.
    expect(answers.answers.get('Three')?.limits.get('rudder_gap')).toMatchObject({
      verdict: { state: 'outside' },
    });
    expect(answers.answers.get('Three')?.answer('rudder_gap')?.value).toBeCloseTo(44.7009, 4);
    expect(answers.answers.get('Four')?.answer('rudder_gap')?.value).toBeCloseTo(56.886, 3);
    expect(answers.answers.get('Four')?.limits.get('rudder_gap')).toMatchObject({
      verdict: { state: 'near' },
    });
  });

  it('keeps former answers until the new ones are there, and drops those of a deleted scenario', () => {
    const idle = queue();
    const answers = answersFor(idle.later);
    const plan = threeAndFour();
    answers.show(plan);
    idle.runAll();
    const without = must(deleteScenario(plan, 'Three'));
    answers.show(without);
    expect([...answers.answers.keys()].toSorted()).toEqual(['Four', null].toSorted());
    idle.runAll();
    expect(answers.answers.has('Three')).toBe(false);
  });

  it('starts anew when an edit comes while it works', () => {
    const idle = queue();
    const answers = answersFor(idle.later);
    const plan = threeAndFour();
    answers.show(plan);
    idle.runOne();
    answers.show(withValue(must(switchTo(plan, 'Three')), 'shim_count', 5));
    idle.runAll();
    expect(answers.answers.get('Three')?.answer('shim_stack')?.value).toBe(60);
    expect(answers.answers.size).toBe(3);
  });

  it('does nothing more once stopped', () => {
    const idle = queue();
    const answers = answersFor(idle.later);
    answers.show(threeAndFour());
    answers.stop();
    idle.runAll();
    expect(answers.answers.size).toBe(0);
  });
});

const compared = (plan: Plan) => {
  const idle = queue();
  const answers = answersFor(idle.later);
  answers.show(plan);
  idle.runAll();
  return compareScenarios(plan, answers.answers);
};

describe('compareScenarios', () => {
  it('sets the choices that differ first, each with its own values', () => {
    const table = compared(threeAndFour());
    expect(table.columns).toEqual([null, 'Three', 'Four']);
    expect(table.inputs[0]?.cell.name).toBe('shim_count');
    expect([...(table.inputs[0]?.values.values() ?? [])].map((it) => it.value)).toEqual([4, 3, 4]);
    expect(table.inputs.filter((it) => it.differs)).toHaveLength(1);
    expect(table.inputs.every((it) => it.cell.kind === 'choice')).toBe(true);
  });

  it('takes in an input of the boat that a scenario has as its own', () => {
    const plan = withValue(must(setApart(threeAndFour(), 'transom_rake')), 'transom_rake', -12);
    const row = compared(plan).inputs.find((it) => it.cell.name === 'transom_rake');
    expect(row?.values.get('Four')).toMatchObject({ value: -12, own: true });
    expect(row?.values.get(null)).toMatchObject({ value: -10, own: false });
  });

  it('sets the limits worst first and leaves out those that apply nowhere', () => {
    const { limits } = compared(threeAndFour());
    expect(limits[0]?.answers.get('Three')?.verdict.state).toBe('outside');
    expect(limits.some((it) => it.name === 'single_strut_cut')).toBe(false);
    expect(limits.find((it) => it.name === 'rudder_gap')?.differs).toBe(true);
    expect(limits.find((it) => it.name === 'drive_headroom')?.differs).toBe(false);
  });

  it('shows what was entered before anything is worked out', () => {
    const table = compareScenarios(threeAndFour(), new Map());
    expect(table.inputs[0]?.values.get('Three')?.value).toBe(3);
    expect(table.limits).toEqual([]);
  });
});
