import type { Plan } from '../../plan/plan.ts';
import type { Asked, Report } from '../study-desk.ts';
import type { Desk } from './desk.ts';
import { type FromWorker, type Line, PLANS_KEPT, type ToWorker } from './messages.ts';
import { type AnswerOf, keyOf, type StudyCall, type StudyName } from './registry.ts';

const WAITING: Report<never> = { state: 'waiting' };

interface Wanted {
  report: Report<unknown>;
  readonly listeners: Set<() => void>;
}

/** Studies worked out behind a line, so that the page never waits for them. */
export class RemoteDesk implements Desk {
  readonly #line: Line<ToWorker, FromWorker>;
  readonly #numbers = new WeakMap<Plan, number>();
  readonly #asked = new WeakMap<Plan, Map<string, unknown>>();
  readonly #wanted = new Map<number, Wanted>();
  #sent: readonly number[] = [];
  #next = 0;

  constructor(line: Line<ToWorker, FromWorker>) {
    this.#line = line;
    line.hear((message) => {
      if (message.kind === 'report') this.#heard(message.id, message.report);
    });
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
    const wanted: Wanted = { report: WAITING, listeners: new Set() };
    return {
      report: () => wanted.report,
      subscribe: (listener) => {
        wanted.listeners.add(listener);
        const isFinished = wanted.report.state === 'answered' || wanted.report.state === 'failed';
        if (wanted.listeners.size === 1 && !isFinished) {
          this.#wanted.set(id, wanted);
          this.#line.send({ kind: 'ask', id, plan: this.#numberOf(plan), call });
        }
        return () => {
          wanted.listeners.delete(listener);
          if (wanted.listeners.size > 0 || !this.#wanted.delete(id)) return;
          this.#line.send({ kind: 'drop', id });
          if (wanted.report.state === 'working') wanted.report = WAITING;
        };
      },
    };
  }

  #numberOf(plan: Plan): number {
    const number = this.#numbers.get(plan) ?? this.#next++;
    this.#numbers.set(plan, number);
    if (!this.#sent.includes(number)) {
      this.#sent = [...this.#sent, number].slice(-PLANS_KEPT);
      this.#line.send({ kind: 'plan', plan: number, content: plan });
    }
    return number;
  }

  #heard(id: number, report: Report<unknown>): void {
    const wanted = this.#wanted.get(id);
    if (wanted === undefined) return;
    wanted.report = report;
    if (report.state === 'answered' || report.state === 'failed') {
      this.#wanted.delete(id);
      this.#line.send({ kind: 'drop', id });
    }
    for (const listener of [...wanted.listeners]) listener();
  }
}
