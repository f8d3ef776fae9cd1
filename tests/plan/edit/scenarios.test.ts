import { describe, expect, it } from 'vitest';
import {
  copyScenario,
  deleteScenario,
  keepScenario,
  renameScenario,
  setApart,
  setReading,
  setScenarioNote,
  switchTo,
} from '../../../src/plan/edit.ts';
import { newPlan } from '../../../src/plan/new-plan.ts';
import { type Plan, readingOf } from '../../../src/plan/plan.ts';
import { planFrom, whyFrom } from './edits.ts';

const base = newPlan('Boat');
const shims = (plan: Plan, count: number): Plan =>
  planFrom(setReading(plan, 'shim_count', { value: count, origin: 'choice' }));
const shimsIn = (plan: Plan, scenario: string | null) => readingOf(plan, 'shim_count', scenario)?.value;
const names = (plan: Plan) => plan.scenarios.map((it) => it.name);

describe('scenarios', () => {
  it('keep the choices as they are shown, whatever becomes of the base', () => {
    const first = planFrom(keepScenario(shims(base, 3), ' Three '));
    expect([names(first), first.active]).toEqual([['Three'], 'Three']);
    const second = planFrom(keepScenario(shims(planFrom(switchTo(first, null)), 6), 'Six'));
    expect([null, 'Three', 'Six'].map((it) => shimsIn(second, it))).toEqual([6, 3, 6]);
    const third = planFrom(keepScenario(shims(second, 7), 'Seven'));
    expect([null, 'Three', 'Six', 'Seven'].map((it) => shimsIn(third, it))).toEqual([6, 3, 7, 7]);
  });

  it('follow the base in what is read off boat and gear, unless that was set apart', () => {
    const apart = planFrom(setApart(planFrom(keepScenario(base, 'A')), 'boat_speed'));
    const kept = planFrom(keepScenario(apart, 'B'));
    expect(kept.scenarios[1]?.overrides.has('boat_speed')).toBe(true);
    expect(kept.scenarios[1]?.overrides.has('transom_rake')).toBe(false);
  });

  it('are copied with all that is theirs', () => {
    const noted = planFrom(setScenarioNote(shims(planFrom(keepScenario(base, 'A')), 2), 'A', 'thin'));
    const copy = planFrom(copyScenario(noted, 'A', 'B'));
    expect(copy.active).toBe('B');
    expect(copy.scenarios[1]).toEqual({ ...copy.scenarios[0], name: 'B' });
    const edited = shims(copy, 9);
    expect([shimsIn(edited, 'A'), shimsIn(edited, 'B')]).toEqual([2, 9]);
  });

  it('are renamed, shown and taken away', () => {
    const two = planFrom(keepScenario(planFrom(keepScenario(base, 'A')), 'B'));
    const renamed = planFrom(renameScenario(two, 'B', ' Ü '));
    expect([names(renamed), renamed.active]).toEqual([['A', 'Ü'], 'Ü']);
    expect(planFrom(renameScenario(two, 'A', 'C')).active).toBe('B');
    expect(planFrom(switchTo(two, 'A')).active).toBe('A');
    expect(planFrom(switchTo(two, 'B'))).toBe(two);
    const gone = planFrom(deleteScenario(two, 'B'));
    expect([names(gone), gone.active]).toEqual([['A'], null]);
    expect(planFrom(deleteScenario(two, 'A')).active).toBe('B');
  });

  it('have names of 1 to 64 characters, each once', () => {
    const one = planFrom(keepScenario(base, 'é'));
    for (const edit of [keepScenario(one, 'e\u0301'), copyScenario(one, 'é', ' é')]) {
      expect(whyFrom(edit)).toBe('There is a scenario named “é” already: take another name.');
    }
    expect(whyFrom(keepScenario(one, '  '))).toContain('is empty');
    expect(whyFrom(renameScenario(one, 'é', ''))).toContain('is empty');
    expect(planFrom(keepScenario(one, 'x'.repeat(64))).scenarios).toHaveLength(2);
    expect(whyFrom(keepScenario(one, 'x'.repeat(65)))).toContain('is 65 characters long; at most 64');
    expect(whyFrom(keepScenario(one, 'a\u202Eb'))).toContain('U+202E');
    expect(whyFrom(keepScenario(one, 'a\nb'))).toContain('U+000A');
    expect(planFrom(renameScenario(one, 'é', 'é'))).toBe(one);
  });

  it('that are not there are named', () => {
    const why = 'There is no scenario named “Z” in this plan.';
    for (const edit of [
      switchTo(base, 'Z'),
      copyScenario(base, 'Z', 'A'),
      renameScenario(base, 'Z', 'A'),
      deleteScenario(base, 'Z'),
      setScenarioNote(base, 'Z', 'a'),
    ]) {
      expect(whyFrom(edit)).toBe(why);
    }
  });

  it('lose their note when it is emptied', () => {
    const noted = planFrom(setScenarioNote(planFrom(keepScenario(base, 'A')), 'A', 'thin'));
    expect(noted.scenarios[0]?.note).toBe('thin');
    expect(planFrom(setScenarioNote(noted, 'A', '')).scenarios[0]).not.toHaveProperty('note');
  });

  it('stop where a file would have too many rows', () => {
    let plan = base;
    let why: string | undefined;
    for (let i = 0; i < 200 && why === undefined; i++) {
      const edit = keepScenario(plan, `S${i}`);
      if (edit.ok) plan = edit.plan;
      else why = edit.why;
    }
    expect(why).toMatch(/^A plan may have 2000 rows/);
    expect(plan.scenarios.length).toBeGreaterThan(50);
  });
});
