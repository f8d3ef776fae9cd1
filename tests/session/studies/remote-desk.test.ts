import { describe, expect, it } from 'vitest';
import type { FromWorker, Line, ToWorker, WorkerLine } from '../../../src/session/studies/messages.ts';
import type { StudyCall } from '../../../src/session/studies/registry.ts';
import { RemoteDesk } from '../../../src/session/studies/remote-desk.ts';
import { work } from '../../../src/session/studies/work.ts';
import type { Pace } from '../../../src/session/study-desk.ts';
import { casePlan } from '../../studies/case-evaluator.ts';

/** Both ends of a line in one thread; messages are copied on the way, as a worker's are. */
function lines(sent: ToWorker[] = []): {
  page: WorkerLine;
  worker: Line<FromWorker, ToWorker>;
  sent: ToWorker[];
  /** Ends the worker, as the browser may at any time. */
  kill: () => void;
} {
  const toPage: ((message: FromWorker) => void)[] = [];
  const toWorker: ((message: ToWorker) => void)[] = [];
  let lost = (): void => {};
  return {
    sent,
    kill: () => {
      toPage.length = 0;
      toWorker.length = 0;
      lost();
    },
    page: {
      lost: (listener) => {
        lost = listener;
      },
      close: () => {
        toPage.length = 0;
        toWorker.length = 0;
      },
      send: (message) => {
        sent.push(message);
        const copy = structuredClone(message);
        for (const it of toWorker) it(copy);
      },
      hear: (it) => toPage.push(it),
    },
    worker: {
      send: (message) => {
        const copy = structuredClone(message);
        for (const it of toPage) it(copy);
      },
      hear: (it) => toWorker.push(it),
    },
  };
}

function handPace(): Pace & { turn: () => boolean } {
  let now = 0;
  const turns: (() => void)[] = [];
  const put = (run: () => void): void => {
    turns.push(run);
  };
  return {
    now: () => now++,
    soon: put,
    afterPaint: put,
    turn: () => {
      const run = turns.shift();
      run?.();
      return run !== undefined;
    },
  };
}

const sweepOf = (input: string, whole = true): StudyCall<'sweep'> => ({
  study: 'sweep',
  ask: { scenario: null, input, results: ['rudder_gap'], low: 0, high: 8, whole, points: 9 },
});

function desk() {
  const { page, worker, sent } = lines();
  const pace = handPace();
  work(worker, pace);
  return { desk: new RemoteDesk(() => page), pace, sent };
}

/** A desk whose workers can be killed; each has a pace of its own, so that a dead one does nothing more. */
function mortalDesk() {
  const sent: ToWorker[] = [];
  const restarts: boolean[] = [];
  const workers: { kill: () => void; pace: ReturnType<typeof handPace> }[] = [];
  const made = new RemoteDesk(
    () => {
      const { page, worker, kill } = lines(sent);
      const pace = handPace();
      work(worker, pace);
      workers.push({ kill, pace });
      return page;
    },
    (isStartedAgain) => restarts.push(isStartedAgain),
  );
  return { desk: made, sent, restarts, workers, last: () => workers.at(-1) as (typeof workers)[0] };
}

describe('studies behind a line', () => {
  it('answer as they would in the page', () => {
    const { desk: it, pace } = desk();
    const asked = it.ask(casePlan(), sweepOf('shim_count'));
    const heard: string[] = [];
    asked.subscribe(() => heard.push(asked.report().state));
    expect(asked.report().state).toBe('waiting');
    while (pace.turn());
    const report = asked.report();
    if (report.state !== 'answered') throw new Error(report.state);
    expect(report.value.points).toHaveLength(9);
    expect(report.value.points[4]?.values[0]).toBeCloseTo(56.886, 4);
    expect(report.value.turnings.find((turn) => turn.limit === 'rudder_gap')?.at).toBe(4);
    expect(heard.at(-1)).toBe('answered');
    expect(heard).toContain('working');
  });

  it('send a plan once, ask once for the same question, and let go of what nobody wants', () => {
    const { desk: it, pace, sent } = desk();
    const plan = casePlan();
    const asked = it.ask(plan, sweepOf('shim_count'));
    expect(it.ask(plan, sweepOf('shim_count'))).toBe(asked);
    const stop = asked.subscribe(() => undefined);
    pace.turn();
    stop();
    while (pace.turn());
    expect(asked.report()).toEqual({ state: 'waiting' });
    it.ask(plan, sweepOf('strut_count')).subscribe(() => undefined);
    while (pace.turn());
    expect(sent.map((message) => message.kind)).toEqual(['plan', 'ask', 'drop', 'ask', 'drop']);
  });

  it('say why they fail', () => {
    const { desk: it, pace } = desk();
    const asked = it.ask(casePlan(), {
      study: 'map',
      ask: {
        scenario: null,
        x: { input: 'shim_count', low: 0, high: 8, whole: true, present: 4, grain: 1 },
        y: { input: 'shim_count', low: 0, high: 8, whole: true, present: 4, grain: 1 },
        results: [],
        fineness: 5,
      },
    });
    asked.subscribe(() => undefined);
    while (pace.turn());
    expect(asked.report()).toEqual({
      state: 'failed',
      why: 'A map varies two inputs; shim_count was given for both.',
    });
  });

  it('follow the plans as they come and go', () => {
    const { desk: it, pace, sent } = desk();
    const plans = [0, 1, 2, 3, 4, 5].map((shim_count) => casePlan({ shim_count }));
    for (const plan of [...plans, plans[0] as (typeof plans)[0]]) {
      const asked = it.ask(plan, sweepOf('strut_count'));
      asked.subscribe(() => undefined);
      while (pace.turn());
      expect(asked.report().state).toBe('answered');
    }
    expect(sent.filter((message) => message.kind === 'plan')).toHaveLength(6);
    it.ask(plans[1] as (typeof plans)[0], sweepOf('upper_bracket_height', false)).subscribe(() => undefined);
    expect(sent.filter((message) => message.kind === 'plan')).toHaveLength(7);
  });
});

describe('studies whose worker is lost', () => {
  it('are started again, say so, and are answered', () => {
    const { desk: it, restarts, last, workers } = mortalDesk();
    const asked = it.ask(casePlan(), sweepOf('shim_count'));
    const heard: string[] = [];
    asked.subscribe(() => heard.push(asked.report().state));
    last().pace.turn();
    last().pace.turn();
    expect(asked.report().state).toBe('working');
    last().kill();
    expect(workers).toHaveLength(2);
    expect(heard.at(-1)).toBe('waiting');
    expect(restarts).toEqual([true]);
    while (last().pace.turn());
    expect(asked.report().state).toBe('answered');
    expect(restarts).toEqual([true, false]);
  });

  it('are given up when each worker is lost, and asked again by who comes back to them', () => {
    const { desk: it, restarts, last, workers } = mortalDesk();
    const plan = casePlan();
    const asked = it.ask(plan, sweepOf('shim_count'));
    const leave = asked.subscribe(() => undefined);
    for (let i = 0; i < 3; i++) last().kill();
    expect(workers).toHaveLength(3);
    expect(asked.report()).toEqual({ state: 'failed', why: expect.stringContaining('stopped each time') });
    expect(restarts).toEqual([true, false]);
    leave();
    it.ask(plan, sweepOf('shim_count')).subscribe(() => undefined);
    while (last().pace.turn());
    expect(asked.report().state).toBe('answered');
  });

  it('are started again when the next is asked, if nothing was wanted meanwhile', () => {
    const { desk: it, restarts, last, workers } = mortalDesk();
    const plan = casePlan();
    it.warm(plan);
    last().kill();
    expect([workers.length, restarts]).toEqual([1, []]);
    const asked = it.ask(plan, sweepOf('shim_count'));
    asked.subscribe(() => undefined);
    while (last().pace.turn());
    expect([workers.length, asked.report().state]).toEqual([2, 'answered']);
  });
});
