import type { Plan } from '../plan/plan.ts';
import type { Progress, Study } from '../studies/study.ts';
import type { Workbook } from '../workbook/workbook.ts';
import { benchOf } from './studies/bench-of.ts';
import { ReplayEvaluators } from './studies/evaluators.ts';
import type { StudyBench } from './studies/study-bench.ts';

/** Longest a study may hold the page at a time, ms. */
const SLICE = 8;

/** Makes a study; it asks the bench for an evaluator of each scenario it looks at. */
export type Make<T> = (bench: StudyBench) => Study<T>;

export interface StudyQuestion<T> {
  /** The same key asks the same question; a plan's answer to it is kept. */
  readonly key: string;
  readonly make: Make<T>;
  /** Goes before studies that can wait. */
  readonly urgent?: boolean;
}

export type Report<T> =
  | { readonly state: 'waiting' }
  | { readonly state: 'working'; readonly progress: Progress }
  | { readonly state: 'answered'; readonly value: T }
  | { readonly state: 'failed'; readonly why: string };

/** A question put to one plan. It is worked on while anybody listens; its answer stays. */
export interface Asked<T> {
  readonly report: () => Report<T>;
  readonly subscribe: (listener: () => void) => () => void;
}

/** When the desk may go on: the first slice of a question after the page has painted, the next ones at once. */
export interface Pace {
  readonly now: () => number;
  readonly soon: (run: () => void) => void;
  readonly afterPaint: (run: () => void) => void;
}

const WAITING: Report<never> = { state: 'waiting' };

/** A hidden page paints nothing, so that the wait for it has an end, ms. */
const NO_PAINT = 100;

/** The browser's own pace. Messages are not held up as timers are, and let the page handle input in between. */
export function browserPace(): Pace {
  const channel = new MessageChannel();
  const waiting: (() => void)[] = [];
  channel.port1.onmessage = () => waiting.shift()?.();
  const soon = (run: () => void): void => {
    waiting.push(run);
    channel.port2.postMessage(undefined);
  };
  const afterPaint = (run: () => void): void => {
    let isDone = false;
    const once = (): void => {
      if (isDone) return;
      isDone = true;
      clearTimeout(timer);
      soon(run);
    };
    const timer = setTimeout(once, NO_PAINT);
    requestAnimationFrame(once);
  };
  return { now: () => performance.now(), soon, afterPaint };
}

const sentence = (error: unknown): string => (error instanceof Error ? error.message : String(error));

class Job<T> {
  readonly urgent: boolean;
  readonly #make: () => Study<T>;
  readonly #enqueue: (job: Job<T>) => void;
  readonly #listeners = new Set<() => void>();
  readonly #onFault: () => void;
  #study: Study<T> | undefined;
  #soFar: unknown;
  #report: Report<T> = WAITING;
  #hasFailed = false;

  constructor(urgent: boolean, make: () => Study<T>, enqueue: (job: Job<T>) => void, onFault: () => void) {
    this.urgent = urgent;
    this.#make = make;
    this.#enqueue = enqueue;
    this.#onFault = onFault;
  }

  readonly report = (): Report<T> => this.#report;

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    if (!this.isFinished && this.#listeners.size === 1) this.#enqueue(this);
    return () => {
      this.#listeners.delete(listener);
    };
  };

  get isFinished(): boolean {
    return this.#report.state === 'answered' || this.#report.state === 'failed';
  }

  get isWanted(): boolean {
    return this.#listeners.size > 0;
  }

  /** Forgets what it has come to; asked again it starts anew. */
  drop(): void {
    this.#study = undefined;
    this.#soFar = undefined;
    this.#report = WAITING;
  }

  /**
   * Works until the clock passes `end` or the study does; tells whoever listens how far it came. A study that throws is
   * begun once more.
   */
  work(now: () => number, end: number): void {
    try {
      this.#study ??= this.#make();
      for (;;) {
        const step = this.#study.next();
        if (step.done === true) {
          this.#tell({ state: 'answered', value: step.value });
          return;
        }
        // What can already be shown is told at once, and stays told until there is more.
        const isNews = step.value.soFar !== undefined;
        if (isNews) this.#soFar = step.value.soFar;
        const isOver = now() >= end;
        if (!isNews && !isOver) continue;
        const soFar = this.#soFar;
        const progress = soFar === undefined ? step.value : { ...step.value, soFar };
        this.#tell({ state: 'working', progress });
        if (isOver) return;
      }
    } catch (error) {
      this.#onFault();
      // A study refuses what it cannot be asked by a RangeError.
      const isFinal = this.#hasFailed || error instanceof RangeError;
      if (isFinal) this.#tell({ state: 'failed', why: sentence(error) });
      else this.drop();
      this.#hasFailed = true;
    }
  }

  #tell(report: Report<T>): void {
    this.#report = report;
    for (const listener of [...this.#listeners]) listener();
  }
}

/**
 * Where a session's studies are worked out: a workbook of their own, one study at a time, a slice at a time, so that
 * the page, or whoever else must be heard, stays quick. A study that nobody listens to any more is dropped.
 */
export class StudyDesk {
  readonly #openWorkbook: () => Workbook;
  readonly #pace: Pace;
  readonly #asked = new WeakMap<Plan, Map<string, unknown>>();
  #workbook: Workbook | undefined;
  #evaluators: ReplayEvaluators | undefined;
  #queue: Job<unknown>[] = [];
  #isRunning = false;

  /** `openWorkbook` gives a workbook that nothing else uses; it is called when the first study starts. */
  constructor(openWorkbook: () => Workbook, pace: Pace = browserPace()) {
    this.#openWorkbook = openWorkbook;
    this.#pace = pace;
  }

  /** Puts a question to a plan; the same object for the same key as long as the plan is the same. */
  ask<T>(plan: Plan, { key, make, urgent = false }: StudyQuestion<T>): Asked<T> {
    const ofPlan = this.#asked.get(plan) ?? new Map<string, unknown>();
    this.#asked.set(plan, ofPlan);
    const known = ofPlan.get(key) as Asked<T> | undefined;
    if (known !== undefined) return known;
    const job = new Job<T>(
      urgent,
      () => make(this.#benchFor(plan)),
      (it) => this.#enqueue(it as Job<unknown>),
      () => this.#forgetWorkbook(),
    );
    ofPlan.set(key, job);
    return job;
  }

  /** Opens the workbook before anything is asked. */
  warm(): void {
    this.#book();
  }

  #book(): Workbook {
    this.#workbook ??= this.#openWorkbook();
    return this.#workbook;
  }

  /** A workbook on which a study threw may hold anything: the next one gets another. */
  #forgetWorkbook(): void {
    this.#workbook = undefined;
    this.#evaluators = undefined;
  }

  #benchFor(plan: Plan): StudyBench {
    const workbook = this.#book();
    this.#evaluators ??= new ReplayEvaluators(workbook);
    return benchOf(workbook, this.#evaluators, plan);
  }

  #enqueue(job: Job<unknown>): void {
    if (!this.#queue.includes(job)) this.#queue.push(job);
    if (this.#isRunning) return;
    this.#isRunning = true;
    this.#pace.afterPaint(this.#slice);
  }

  readonly #slice = (): void => {
    for (const job of this.#queue) if (!job.isWanted && !job.isFinished) job.drop();
    this.#queue = this.#queue.filter((it) => it.isWanted && !it.isFinished);
    const job = this.#queue.find((it) => it.urgent) ?? this.#queue[0];
    if (job === undefined) {
      this.#isRunning = false;
      return;
    }
    job.work(this.#pace.now, this.#pace.now() + SLICE);
    this.#pace.soon(this.#slice);
  };
}
