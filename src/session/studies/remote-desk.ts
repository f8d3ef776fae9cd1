import type { Plan } from '../../plan/plan.ts';
import type { Asked, Report } from '../study-desk.ts';
import type { Desk } from './desk.ts';
import { PLANS_KEPT, type WorkerLine } from './messages.ts';
import { type AnswerOf, keyOf, type StudyCall, type StudyName } from './registry.ts';

const WAITING: Report<never> = { state: 'waiting' };

/** How often a question is put again to a new worker before it is given up. */
const MOST_LOSSES = 2;

const LOST: Report<never> = {
  state: 'failed',
  why: 'the part of the page that works studies out stopped each time it was started.',
};

interface Wanted {
  readonly plan: Plan;
  readonly call: StudyCall;
  report: Report<unknown>;
  /** How many workers were lost while it was wanted. */
  losses: number;
  readonly listeners: Set<() => void>;
}

/**
 * Studies worked out behind a line, so that the page never waits for them. A worker that is lost is started again, and
 * asked what the one before had not answered.
 */
export class RemoteDesk implements Desk {
  readonly #open: () => WorkerLine;
  readonly #numbers = new WeakMap<Plan, number>();
  readonly #asked = new WeakMap<Plan, Map<string, unknown>>();
  readonly #wanted = new Map<number, Wanted>();
  readonly #onRestart: (isStartedAgain: boolean) => void;
  #line: WorkerLine | undefined;
  #isStartedAgain = false;
  #sent: readonly number[] = [];
  #next = 0;

  /** `onRestart` hears when a worker was lost and started again, and when the new one has answered. */
  constructor(open: () => WorkerLine, onRestart: (isStartedAgain: boolean) => void = () => {}) {
    this.#open = open;
    this.#onRestart = onRestart;
  }

  /** Lets the worker open its workbook before the first question. */
  warm(plan: Plan): void {
    this.#numberOf(plan);
  }

  ask<N extends StudyName>(plan: Plan, call: StudyCall<N>): Asked<AnswerOf<N>> {
    const ofPlan = this.#asked.get(plan) ?? new Map<string, unknown>();
    this.#asked.set(plan, ofPlan);
    const key = keyOf(call as StudyCall);
    const known = ofPlan.get(key) as Asked<AnswerOf<N>> | undefined;
    if (known !== undefined) return known;
    const made = this.#asking(plan, call as StudyCall) as Asked<AnswerOf<N>>;
    ofPlan.set(key, made);
    return made;
  }

  #asking(plan: Plan, call: StudyCall): Asked<unknown> {
    const id = this.#next++;
    const wanted: Wanted = { plan, call, report: WAITING, losses: 0, listeners: new Set() };
    return {
      report: () => wanted.report,
      subscribe: (listener) => {
        wanted.listeners.add(listener);
        // Who comes back to a question that was given up asks it again.
        if (wanted.listeners.size === 1 && wanted.report === LOST) wanted.report = WAITING;
        const isFinished = wanted.report.state === 'answered' || wanted.report.state === 'failed';
        if (wanted.listeners.size === 1 && !isFinished) {
          wanted.losses = 0;
          this.#wanted.set(id, wanted);
          this.#put(id, wanted);
        }
        return () => {
          wanted.listeners.delete(listener);
          if (wanted.listeners.size > 0 || !this.#wanted.delete(id)) return;
          this.#line?.send({ kind: 'drop', id });
          if (wanted.report.state === 'working') wanted.report = WAITING;
        };
      },
    };
  }

  #put(id: number, { plan, call }: Wanted): void {
    const number = this.#numberOf(plan);
    this.#live().send({ kind: 'ask', id, plan: number, call });
  }

  /** Puts a question again; false where no worker can be started. */
  #puts(id: number, wanted: Wanted): boolean {
    try {
      this.#put(id, wanted);
      return true;
    } catch {
      return false;
    }
  }

  #numberOf(plan: Plan): number {
    const line = this.#live();
    const number = this.#numbers.get(plan) ?? this.#next++;
    this.#numbers.set(plan, number);
    if (!this.#sent.includes(number)) {
      this.#sent = [...this.#sent, number].slice(-PLANS_KEPT);
      line.send({ kind: 'plan', plan: number, content: plan });
    }
    return number;
  }

  /** The line to the worker there is, or to one that is started now. */
  #live(): WorkerLine {
    if (this.#line !== undefined) return this.#line;
    const line = this.#open();
    this.#line = line;
    this.#sent = [];
    line.hear((message) => {
      if (this.#line === line && message.kind === 'report') this.#heard(message.id, message.report);
    });
    line.lost(() => {
      if (this.#line === line) this.#lose(line);
    });
    return line;
  }

  /** Puts what a lost worker was asked to another, or gives it up when that has been lost often enough. */
  #lose(line: WorkerLine): void {
    line.close();
    this.#line = undefined;
    this.#tellRestart(this.#wanted.size > 0);
    for (const [id, wanted] of [...this.#wanted]) {
      wanted.losses++;
      wanted.report = wanted.losses <= MOST_LOSSES && this.#puts(id, wanted) ? WAITING : LOST;
      if (wanted.report === LOST) this.#wanted.delete(id);
      for (const listener of [...wanted.listeners]) listener();
    }
    if (this.#wanted.size === 0) this.#tellRestart(false);
  }

  #heard(id: number, report: Report<unknown>): void {
    const wanted = this.#wanted.get(id);
    if (wanted === undefined) return;
    wanted.report = report;
    if (report.state === 'answered' || report.state === 'failed') {
      this.#wanted.delete(id);
      this.#line?.send({ kind: 'drop', id });
      this.#tellRestart(false);
    }
    for (const listener of [...wanted.listeners]) listener();
  }

  #tellRestart(isStartedAgain: boolean): void {
    if (this.#isStartedAgain === isStartedAgain) return;
    this.#isStartedAgain = isStartedAgain;
    this.#onRestart(isStartedAgain);
  }
}
