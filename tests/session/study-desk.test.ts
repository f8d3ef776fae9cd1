import { describe, expect, it } from 'vitest';
import { type Pace, StudyDesk, type StudyQuestion } from '../../src/session/study-desk.ts';
import { Workbook } from '../../src/workbook/workbook.ts';
import { casePlan } from '../studies/case-evaluator.ts';

/** A clock that moves 1 ms each time it is read, and turns that are taken by hand. */
function handPace(): Pace & { turn: () => boolean; paint: () => boolean } {
  let now = 0;
  const turns: (() => void)[] = [];
  const paints: (() => void)[] = [];
  const take = (from: (() => void)[]) => (): boolean => {
    const run = from.shift();
    run?.();
    return run !== undefined;
  };
  return {
    now: () => now++,
    soon: (run) => turns.push(run),
    afterPaint: (run) => paints.push(run),
    turn: take(turns),
    paint: take(paints),
  };
}

const plan = casePlan();

/** A study of so many steps, which counts them. */
function counting(key: string, length: number, more: Partial<StudyQuestion<string>> = {}) {
  const steps = { made: 0, done: 0 };
  const question: StudyQuestion<string> = {
    key,
    *make() {
      steps.made++;
      for (let i = 1; i <= length; i++) {
        steps.done++;
        yield { done: i, of: length };
      }
      return `${key} answered`;
    },
    ...more,
  };
  return { question, steps };
}

function desk() {
  const pace = handPace();
  const made = new StudyDesk(() => new Workbook(plan, null), pace);
  return { pace, desk: made };
}

describe('StudyDesk', () => {
  it('begins after the page has painted, and works a slice of 8 ms at a time', () => {
    const { pace, desk: it } = desk();
    const { question, steps } = counting('long', 20);
    const asked = it.ask(plan, question);
    const heard: string[] = [];
    asked.subscribe(() => heard.push(asked.report().state));
    expect(steps.done).toBe(0);
    expect(asked.report()).toEqual({ state: 'waiting' });
    pace.paint();
    expect(steps.done).toBe(8);
    expect(asked.report()).toEqual({ state: 'working', progress: { done: 8, of: 20 } });
    pace.turn();
    expect(steps.done).toBe(16);
    pace.turn();
    expect(asked.report()).toEqual({ state: 'answered', value: 'long answered' });
    expect(heard).toEqual(['working', 'working', 'answered']);
    pace.turn();
    expect(pace.turn()).toBe(false);
  });

  it('answers a question of one plan once, whoever asks, and another plan anew', () => {
    const { pace, desk: it } = desk();
    const { question, steps } = counting('once', 3);
    const first = it.ask(plan, question);
    expect(it.ask(plan, { ...question })).toBe(first);
    first.subscribe(() => undefined);
    it.ask(plan, question).subscribe(() => undefined);
    pace.paint();
    expect(steps.made).toBe(1);
    expect(it.ask(plan, question).report()).toEqual({ state: 'answered', value: 'once answered' });
    const other = it.ask(casePlan({ shim_count: 3 }), question);
    expect(other.report()).toEqual({ state: 'waiting' });
  });

  it('drops a study that nobody listens to any more, and starts it anew when asked again', () => {
    const { pace, desk: it } = desk();
    const { question, steps } = counting('dropped', 20);
    const asked = it.ask(plan, question);
    const stop = asked.subscribe(() => undefined);
    pace.paint();
    stop();
    pace.turn();
    expect(steps.done).toBe(8);
    expect(asked.report()).toEqual({ state: 'waiting' });
    asked.subscribe(() => undefined);
    pace.paint();
    expect(steps).toEqual({ made: 2, done: 16 });
  });

  it('takes the urgent before what can wait', () => {
    const { pace, desk: it } = desk();
    const slow = counting('slow', 20);
    const quick = counting('quick', 4, { urgent: true });
    const order: string[] = [];
    for (const { question } of [slow, quick]) {
      const asked = it.ask(plan, question);
      asked.subscribe(() => order.push(`${question.key} ${asked.report().state}`));
    }
    pace.paint();
    while (pace.turn());
    expect(order[0]).toBe('quick answered');
    expect(order.at(-1)).toBe('slow answered');
  });

  it('says why a study fails, and goes on with the next', () => {
    const { pace, desk: it } = desk();
    const failing: StudyQuestion<string> = {
      key: 'failing',
      make() {
        throw new RangeError('A sweep from 5 to 5 was asked for.');
      },
    };
    const asked = it.ask(plan, failing);
    const next = it.ask(plan, counting('next', 2).question);
    asked.subscribe(() => undefined);
    next.subscribe(() => undefined);
    pace.paint();
    expect(asked.report()).toEqual({ state: 'failed', why: 'A sweep from 5 to 5 was asked for.' });
    pace.turn();
    expect(next.report().state).toBe('answered');
  });

  it('gives an evaluator of any scenario, over a workbook of its own that is opened once', () => {
    const pace = handPace();
    let opened = 0;
    const it = new StudyDesk(() => {
      opened++;
      return new Workbook(plan, null);
    }, pace);
    const threeShims = {
      ...plan,
      scenarios: [
        {
          name: 'Three shims',
          overrides: new Map([['shim_count', { value: 3, origin: 'choice' as const }]]),
        },
      ],
    };
    const ask = (scenario: string | null) => {
      const asked = it.ask<number | null>(threeShims, {
        key: `gap ${scenario}`,
        // biome-ignore lint/correctness/useYield: one look is all it takes
        *make({ evaluatorOf }) {
          return evaluatorOf(scenario).evaluate(new Map()).value('rudder_gap');
        },
      });
      asked.subscribe(() => undefined);
      return asked;
    };
    const asked = [ask(null), ask('Three shims')];
    pace.paint();
    while (pace.turn());
    const values = asked.map((one) => {
      const report = one.report();
      return report.state === 'answered' ? report.value : undefined;
    });
    expect(values[0]).toBeCloseTo(56.886, 4);
    expect(values[1]).toBeCloseTo(44.7009, 4);
    expect(opened).toBe(1);
  });
});
