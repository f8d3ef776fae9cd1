import { describe, expect, it } from 'vitest';
import { inputs, results } from '../../src/plan/book.ts';
import { keepScenario } from '../../src/plan/edit/scenarios.ts';
import { openPlan } from '../../src/plan/file/open-plan.ts';
import { writePlan } from '../../src/plan/file/write-plan.ts';
import { newPlan } from '../../src/plan/new-plan.ts';
import type { Plan } from '../../src/plan/plan.ts';
import { ScenarioAnswers } from '../../src/session/scenario-answers.ts';
import { Session } from '../../src/session/session.ts';
import { StudyDesk } from '../../src/session/study-desk.ts';
import { Workbook } from '../../src/workbook/workbook.ts';

/** Workbooks whose engine throws for as long as it is told to, after it has changed some of what it holds. */
function mortal() {
  const state = { fails: false };
  class Mortal extends Workbook {
    override show(...given: Parameters<Workbook['show']>): ReturnType<Workbook['show']> {
      const changed = super.show(...given);
      if (state.fails) throw new Error('out of memory');
      return changed;
    }
    override another(plan?: Plan): Workbook {
      if (state.fails) throw new Error('out of memory');
      return new Mortal(plan ?? newPlan('x'));
    }
  }
  return { state, open: (plan: Plan, scenario?: string | null) => new Mortal(plan, scenario) };
}

function opened() {
  const { state, open } = mortal();
  const session = new Session(newPlan('x'));
  session.attach(open(session.plan));
  return { session, state };
}

/** Nothing that the engine gave is shown: results and limits have no answer, inputs are what the plan says. */
function isBlank(session: Session): void {
  for (const { name } of results) {
    expect(session.answer(name as string)).toEqual({ value: null, why: expect.stringMatching(/\.$/) });
  }
  for (const { name } of inputs) {
    expect(session.value(name as string)).toBe(session.reading(name as string)?.value);
  }
  const known = new Set<string>(inputs.map(({ name }) => name));
  const onResults = session.judgement.limits.filter(({ result }) => !known.has(result));
  expect(onResults.length).toBeGreaterThan(30);
  for (const { verdict } of onResults) expect(['no answer', 'does not apply']).toContain(verdict.state);
}

describe('a fault of the engine', () => {
  it('leaves the edit whole and no number standing, and says why', () => {
    const { session, state } = opened();
    let told = 0;
    session.subscribe(() => told++);
    state.fails = true;
    expect(session.choose('shim_count', 3)).toEqual({ ok: true });
    expect(told).toBe(1);
    expect(session.plan.inputs.get('shim_count')?.value).toBe(3);
    expect(session.undoes).toBe('Shims under the lower bracket');
    expect(session.fault?.why).toBe('The part that works the plan out stopped: out of memory.');
    expect(session.ready).toBe(true);
    isBlank(session);
    const reopened = openPlan(writePlan(session.plan));
    expect(reopened).toMatchObject({ ok: true });
    expect(reopened.ok && reopened.plan.inputs.get('shim_count')?.value).toBe(3);
  });

  it('ends with the next edit that can be worked out, with undo, or when it is tried again', () => {
    for (const mend of [
      (it: Session) => it.fault?.again(),
      (it: Session) => void it.choose('shim_count', 3),
      (it: Session) => {
        it.undo();
        it.redo();
      },
    ]) {
      const { session, state } = opened();
      state.fails = true;
      session.choose('shim_count', 3);
      session.fault?.again();
      expect(session.fault).toBeDefined();
      isBlank(session);
      state.fails = false;
      mend(session);
      expect(session.fault).toBeUndefined();
      expect(session.value('rudder_gap')).toBeCloseTo(44.7009, 4);
      expect(session.answer('shim_stack')?.value).toBe(36);
    }
  });

  it('blanks what undo shows, and keeps a refused text as typed', () => {
    const { session, state } = opened();
    session.choose('shim_count', 3);
    session.enter('upper_bracket_height', '2 3/0');
    state.fails = true;
    session.undo();
    expect(session.plan.inputs.get('shim_count')?.value).toBe(4);
    expect(session.redoes).toBe('Shims under the lower bracket');
    expect(session.draft('upper_bracket_height')?.typed).toBe('2 3/0');
    isBlank(session);
    session.choose('shim_count', 5);
    expect(session.value('shim_count')).toBe(5);
    isBlank(session);
  });

  it('may come before there is any engine: what is typed then is kept, and worked out once there is one', () => {
    const session = new Session(newPlan('x'));
    let tried = 0;
    session.fail('The part that works the plan out could not be loaded.', () => tried++);
    session.choose('shim_count', 3);
    expect(session.value('shim_count')).toBe(3);
    isBlank(session);
    session.fault?.again();
    expect(tried).toBe(1);
    session.attach(new Workbook(session.plan));
    expect(session.fault).toBeUndefined();
    expect(session.value('rudder_gap')).toBeCloseTo(44.7009, 4);
  });
});

describe('a fault in one scenario’s workbook', () => {
  it('leaves it without numbers and the others with theirs, and ends with the next change', () => {
    const { state, open } = mortal();
    const kept = keepScenario(newPlan('x'), 'Kept');
    if (!kept.ok) throw new Error(kept.why);
    const work: (() => void)[] = [];
    const answers = new ScenarioAnswers(open, (run) => {
      work.push(run);
      return () => {};
    });
    answers.show(kept.plan);
    work.shift()?.();
    state.fails = true;
    work.shift()?.();
    const gap = (scenario: string | null) => answers.answers.get(scenario)?.answer('rudder_gap');
    const [first, second] = kept.plan.active === null ? [null, 'Kept'] : [kept.plan.active, null];
    expect(gap(first)?.value).toBeCloseTo(56.886, 3);
    expect(gap(second)).toEqual({ value: null, why: 'It could not be worked out: out of memory' });
    expect(answers.waiting).toBe(0);
    state.fails = false;
    answers.show({ ...kept.plan });
    while (work.length > 0) work.shift()?.();
    expect(gap(second)?.value).toBeCloseTo(56.886, 3);
    answers.stop();
  });
});

describe('a study that throws', () => {
  it('is begun once more on another workbook, and answers', () => {
    const plan = newPlan('x');
    const books: Workbook[] = [];
    const turns: (() => void)[] = [];
    const put = (run: () => void) => void turns.push(run);
    const desk = new StudyDesk(
      () => {
        const book = new Workbook(plan, null);
        books.push(book);
        return book;
      },
      { now: () => 0, soon: put, afterPaint: put },
    );
    let fails = 1;
    const ask = (key: string) =>
      desk.ask(plan, {
        key,
        *make(bench) {
          const gap = bench.evaluatorOf(null).evaluate(new Map()).value('rudder_gap');
          yield { done: 0, of: 1 };
          if (fails-- > 0) throw new Error('out of memory');
          return gap;
        },
      });
    const asked = ask('once');
    asked.subscribe(() => {});
    while (turns.length > 0) turns.shift()?.();
    expect(asked.report()).toMatchObject({ state: 'answered', value: expect.closeTo(56.886, 3) });
    expect(books).toHaveLength(2);
    fails = 2;
    const lost = ask('twice');
    lost.subscribe(() => {});
    while (turns.length > 0) turns.shift()?.();
    expect(lost.report()).toEqual({ state: 'failed', why: 'out of memory' });
  });
});
