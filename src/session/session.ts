import type { LeastRoom } from '../calc/limits/judge.ts';
import { inputNamed } from '../plan/book.ts';
import type { Edited } from '../plan/edit/edited.ts';
import { setReading } from '../plan/edit/reading.ts';
import { setStudy } from '../plan/edit/studies.ts';
import type { Known } from '../plan/known.ts';
import { type Plan, type Reading, readingOf, type StudySettings, type Value } from '../plan/plan.ts';
import type { Answer } from '../workbook/engine.ts';
import { clashWith, type Entered, enterText, enterValue } from '../workbook/enter.ts';
import type { Judgement, LimitAnswer } from '../workbook/judged.ts';
import type { Workbook } from '../workbook/workbook.ts';
import { blankAnswers } from './blank-answers.ts';
import { emptyJournal, type Journal, redoStep, type Step, undoStep, withStep } from './journal.ts';
import { withErrors } from './survey/follow-errors.ts';

/** A text that was refused: kept as typed, with the reason, until it is mended or dropped. */
export interface Draft {
  readonly typed: string;
  readonly why: string;
}

export type Done = { readonly ok: true } | { readonly ok: false; readonly why: string };

const DONE: Done = { ok: true };

/** Why nothing is worked out, as whole sentences, and what tries to have it worked out again. */
export interface Fault {
  readonly why: string;
  readonly again: () => void;
}

const stopped = (error: unknown): string => {
  const message = error instanceof Error ? error.message : String(error);
  return `The part that works the plan out stopped: ${message.replace(/\.?$/, '.')}`;
};

/** What every cell says that cannot be worked out because of a fault. */
const STOPPED = 'The workbook stopped working things out.';

const NO_JUDGEMENT: Judgement = { limits: [], leastRoom: undefined, unanswered: 0 };

let wholes = 0;

const sameLimit = (a: LimitAnswer | undefined, b: LimitAnswer): boolean =>
  a !== undefined &&
  a.value === b.value &&
  a.low === b.low &&
  a.high === b.high &&
  a.why === b.why &&
  a.verdict.state === b.verdict.state;

/**
 * One open plan: what it holds, what the workbook answers, what can be undone. Every change is a new plan put through
 * `#apply`; listeners hear once per change. The workbook may arrive after the first paint; until then answers are
 * missing, and nothing that was typed is lost. Where the engine fails, an edit still stands whole; no number is shown
 * until a new engine has worked the plan out.
 */
export class Session {
  #plan: Plan;
  #journal: Journal = emptyJournal;
  #workbook: Workbook | undefined;
  #answers = new Map<string, Answer>();
  #judgement: Judgement = NO_JUDGEMENT;
  #changed: ReadonlySet<string> = new Set();
  #drafts: ReadonlyMap<string, Draft> = new Map();
  #opened = 0;
  #fault: Fault | undefined;
  /** The last workbook there was, from which another can be made. */
  #former: Workbook | undefined;
  /** The gesture being made, and the journal from before it. */
  #gesture: { readonly name: string; readonly before: Journal } | undefined;
  /** The gesture that all edits belong to just now. */
  #whole: string | undefined;
  readonly #listeners = new Set<() => void>();

  constructor(plan: Plan) {
    this.#plan = plan;
  }

  /** Hands over the workbook once the engine has loaded. */
  attach(workbook: Workbook): void {
    this.#former = workbook;
    this.#take(() => {
      workbook.show(this.#plan, this.#plan.active);
      return workbook;
    });
    this.#tell();
  }

  /** Why nothing is worked out; undefined while all is well. */
  get fault(): Fault | undefined {
    return this.#fault;
  }

  /** Says that nothing can be worked out, and blanks every number that would be; `again` tries to mend it. */
  fail(why: string, again: () => void): void {
    this.#stop(why, again);
    this.#tell();
  }

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  get plan(): Plan {
    return this.#plan;
  }

  /** Whether the engine has answered, or failed to. */
  get ready(): boolean {
    return this.#workbook !== undefined || this.#fault !== undefined;
  }

  /** Every cell that has an answer, or a reason why not. */
  get names(): Iterable<string> {
    return this.#answers.keys();
  }

  /** The answer of any cell; the same object until it changes. */
  answer<N extends string>(name: N & Known<N>): Answer | undefined {
    return this.#answers.get(name);
  }

  /** The value of any cell; an input's own reading while the engine is loading. */
  value<N extends string>(name: N & Known<N>): Value {
    const answer = this.#answers.get(name);
    return answer === undefined ? (readingOf(this.#plan, name)?.value ?? null) : answer.value;
  }

  reading<N extends string>(name: N & Known<N>): Reading | undefined {
    return readingOf(this.#plan, name);
  }

  /** Every limit, in the workbook's order; an entry is the same object until it changes. */
  get judgement(): Judgement {
    return this.#judgement;
  }

  get leastRoom(): LeastRoom | undefined {
    return this.#judgement.leastRoom;
  }

  /** Names whose answers the last edit changed. */
  get changed(): ReadonlySet<string> {
    return this.#changed;
  }

  draft<N extends string>(name: N & Known<N>): Draft | undefined {
    return this.#drafts.get(name);
  }

  /** How often another plan has taken the place of the one before. */
  get opened(): number {
    return this.#opened;
  }

  get workbook(): Workbook | undefined {
    return this.#workbook;
  }

  get journal(): Journal {
    return this.#journal;
  }

  /** Takes up the journal that was kept with the plan just loaded. */
  recall(journal: Journal): void {
    this.#journal = journal;
    this.#tell();
  }

  /** What undo would take back, in words; undefined when there is nothing. */
  get undoes(): string | undefined {
    return this.#journal.done.at(-1)?.label;
  }

  get redoes(): string | undefined {
    return this.#journal.undone.at(-1)?.label;
  }

  /** Puts in what a person typed. A refusal keeps the text as a draft and the last good value in use. */
  enter<N extends string>(name: N & Known<N>, typed: string): Done {
    const done = this.#put(name, this.#read(name, typed));
    if (!done.ok) this.refuse<string>(name, typed, done.why);
    return done;
  }

  /** Whether what a person typed would be put in. */
  takes<N extends string>(name: N & Known<N>, typed: string): boolean {
    return this.#with(name, this.#read(name, typed)).ok;
  }

  /** Puts in a value from a stepper, a slider or a proposal. */
  choose<N extends string>(name: N & Known<N>, value: Value, gesture?: string): Done {
    const cell = inputNamed(name as string);
    if (cell === undefined) return { ok: false, why: `There is no input named ${name}.` };
    return this.#put(name, enterValue(cell, value, this.reading(name as string)), gesture);
  }

  /** Takes a gesture back that was none, such as a drag that became a scroll: all is as if it had not begun. */
  takeBack(gesture: string): void {
    const step = this.#journal.done.at(-1);
    if (this.#gesture?.name !== gesture || step?.gesture !== gesture) return;
    this.#journal = this.#gesture.before;
    this.#show(this.#asSetNow(step.before));
  }

  /** Changes what is noted about a reading without changing its value. */
  annotate<N extends string>(name: N & Known<N>, notes: Partial<Omit<Reading, 'value' | 'formula'>>): Done {
    const reading = this.reading(name as string);
    if (reading === undefined) return { ok: false, why: `There is no input named ${name}.` };
    return this.edit(`Note on ${labelFor(name)}`, (plan) => setReading(plan, name, { ...reading, ...notes }));
  }

  /** Keeps a text that is not put in, with the reason. */
  refuse<N extends string>(name: N & Known<N>, typed: string, why: string): void {
    this.#drafts = new Map(this.#drafts).set(name, { typed, why });
    this.#tell();
  }

  dropDraft<N extends string>(name: N & Known<N>): void {
    if (!this.#drafts.has(name)) return;
    const drafts = new Map(this.#drafts);
    drafts.delete(name);
    this.#drafts = drafts;
    this.#tell();
  }

  /** Counts every edit made in `work` as one step of undo, called as the first of them. */
  asOne<T>(work: () => T): T {
    if (this.#whole !== undefined) return work();
    this.#whole = `whole ${++wholes}`;
    try {
      return work();
    } finally {
      this.#whole = undefined;
    }
  }

  /** Any other edit of the plan: scenarios, own cells, limits, units, title. */
  edit(label: string, change: (plan: Plan) => Edited): Done {
    const edited = change(this.#plan);
    if (!edited.ok) return edited;
    this.#apply(label, edited.plan);
    return DONE;
  }

  /** What a chart, study, table or drawing shows or is set to: kept with the plan, and no step of undo. */
  arrange(study: string, settings: StudySettings['settings']): Done {
    const edited = setStudy(this.#plan, study, settings);
    if (!edited.ok) return edited;
    if (edited.plan !== this.#plan) {
      this.#plan = edited.plan;
      this.#tell();
    }
    return DONE;
  }

  /** Shows the plan that was kept, before anything is edited: there is nothing to undo. */
  load(plan: Plan): void {
    this.#journal = emptyJournal;
    this.#drafts = new Map();
    this.#opened += 1;
    this.#show(plan);
    this.#changed = new Set();
  }

  /** Opens another plan in this one's place; undo brings this one back. */
  open(plan: Plan, label: string): void {
    this.#drafts = new Map();
    this.#opened += 1;
    this.#apply(label, plan, undefined, true);
  }

  undo(): void {
    this.#move(undoStep(this.#journal, this.#plan), 'before');
  }

  redo(): void {
    this.#move(redoStep(this.#journal, this.#plan), 'after');
  }

  #move(moved: { readonly step: Step; readonly journal: Journal } | undefined, to: 'before' | 'after'): void {
    if (moved === undefined) return;
    const { step } = moved;
    let plan: Plan;
    try {
      plan = step[to];
    } catch {
      // A step kept by another version that cannot be read any more: the way back ends here.
      this.recall(emptyJournal);
      return;
    }
    this.#journal = moved.journal;
    if (step.opens === true) {
      this.#opened += 1;
      this.#show(plan);
    } else this.#show(this.#asSetNow(plan));
  }

  /** A plan with its studies set to what they are now. */
  #asSetNow(plan: Plan): Plan {
    const { studies } = this.#plan;
    return plan.studies === studies ? plan : { ...plan, studies };
  }

  #read(name: string, typed: string): Entered {
    const cell = inputNamed(name);
    if (cell === undefined) return { ok: false, why: `There is no input named ${name}.` };
    const bare = this.#plan.units === 'in' ? 'in' : 'mm';
    return enterText(cell, typed, bare, this.#plan, this.reading(name));
  }

  /** The plan with a reading, or why it cannot be. */
  #with(name: string, entered: Entered): Edited {
    if (!entered.ok) return entered;
    const together = clashWith(new Map([[name, entered.reading]]), (other) => this.value(other));
    return together === undefined
      ? setReading(this.#plan, name, entered.reading)
      : { ok: false, why: together };
  }

  #put(name: string, entered: Entered, gesture?: string): Done {
    const edited = this.#with(name, entered);
    if (!edited.ok) return edited;
    if (this.#drafts.has(name)) {
      const drafts = new Map(this.#drafts);
      drafts.delete(name);
      this.#drafts = drafts;
    }
    this.#apply(labelFor(name), edited.plan, gesture);
    return DONE;
  }

  #apply(label: string, after: Plan, made?: string, opens?: true): void {
    const gesture = this.#whole ?? made;
    if (after === this.#plan) {
      // Nothing changed but, it may be, a draft that was dropped.
      this.#tell();
      return;
    }
    const before = this.#plan;
    if (gesture !== undefined && this.#gesture?.name !== gesture) {
      this.#gesture = { name: gesture, before: this.#journal };
    }
    this.#work(after);
    this.#journal = withStep(this.#journal, { label, before, after: this.#plan, gesture, opens });
    this.#tell();
  }

  #show(plan: Plan): void {
    this.#work(plan);
    this.#tell();
  }

  /** Takes a plan up and works its answers out. After a fault a new engine is tried. */
  #work(after: Plan): void {
    const plan = withErrors(this.#plan, after);
    this.#plan = plan;
    if (this.#fault !== undefined) this.#restart();
    const workbook = this.#workbook;
    if (workbook === undefined) return;
    try {
      const changed = workbook.show(plan, plan.active);
      for (const name of changed) this.#answers.set(name, workbook.answer(name));
      this.#changed = changed;
      this.#judge();
    } catch (error) {
      this.#stop(stopped(error), this.#again);
    }
  }

  readonly #again = (): void => {
    this.#restart();
    this.#tell();
  };

  /** Works the plan out by a new engine, where there was one before; else only the blanks are the new plan's. */
  #restart(): void {
    const [former, fault] = [this.#former, this.#fault];
    if (former !== undefined) this.#take(() => former.another(this.#plan));
    else if (fault !== undefined) this.#stop(fault.why, fault.again);
  }

  /** Takes a workbook that shows the plan, and reads all of it. */
  #take(open: () => Workbook): void {
    try {
      this.#workbook = open();
      this.#readAll();
      this.#fault = undefined;
      this.#changed = new Set();
    } catch (error) {
      this.#stop(stopped(error), this.#again);
    }
  }

  #stop(why: string, again: () => void): void {
    this.#workbook = undefined;
    this.#fault = { why, again };
    const { answers, judgement } = blankAnswers(this.#plan, this.#plan.active, STOPPED);
    this.#answers = answers;
    this.#judgement = judgement;
    this.#changed = new Set();
  }

  #readAll(): void {
    const workbook = this.#workbook;
    if (workbook === undefined) return;
    this.#answers = new Map(workbook.names.map((name) => [name, workbook.answer(name)]));
    this.#judge();
  }

  #judge(): void {
    const workbook = this.#workbook;
    if (workbook === undefined) return;
    const before = new Map(this.#judgement.limits.map((it) => [it.name, it]));
    const next = workbook.judgement();
    const limits = next.limits.map((it) => {
      const old = before.get(it.name);
      return old !== undefined && sameLimit(old, it) ? old : it;
    });
    this.#judgement = { ...next, limits };
  }

  #tell(): void {
    for (const listener of [...this.#listeners]) listener();
  }
}

const labelFor = (name: string): string => inputNamed(name)?.label ?? name;
