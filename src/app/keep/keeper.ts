import { CURRENT_VERSION } from '../../plan/file/migrations.ts';
import { openPlan } from '../../plan/file/open-plan.ts';
import { writePlan } from '../../plan/file/write-plan.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Journal } from '../../session/journal.ts';
import { failureSentence } from './failure.ts';
import { writeJournal } from './journal-text.ts';
import { type News, type NewsLine, newsLine } from './news.ts';
import { type Observable, Subject } from './observable.ts';
import { type Base, readBase, recordOf, type Saved, save } from './save.ts';
import type { Store } from './store.ts';
import type { World } from './world.ts';
import { type WriterLock, writerLock } from './writer-lock.ts';

/** Whether what is shown is also stored. */
export type KeepState =
  | { readonly state: 'keeping' }
  /** Milliseconds since 1970. */
  | { readonly state: 'kept'; readonly when: number }
  | {
      readonly state: 'not kept';
      readonly why: string;
      /** Another window stands in the way, and `takeOver` would mend it. */
      readonly elsewhere?: true;
    };

const KEEPING: KeepState = { state: 'keeping' };

const DOOR = 'The plan is still in this window; save it as a file now.';

/** Milliseconds without an edit before a save. */
const PAUSE = 300;

const ELSEWHERE: KeepState = {
  state: 'not kept',
  why: 'This plan is open in another window, which keeps it. What you change here is not kept.',
  elsewhere: true,
};

const TAKEN: KeepState = {
  state: 'not kept',
  why: 'Another window has taken this plan over. What you change here is not kept.',
  elsewhere: true,
};

const CLOSED: KeepState = {
  state: 'not kept',
  why: 'This plan was closed here, so nothing more of it is stored.',
};

const WHY: Readonly<Record<(Saved & { ok: false })['why'], KeepState>> = {
  overtaken: {
    state: 'not kept',
    why: 'Another window has saved this plan since it was opened here. What you change here is not kept.',
    elsewhere: true,
  },
  newer: {
    state: 'not kept',
    why: 'A newer version of this workbook has saved this plan. Save what you have here as a file, then reload this window.',
  },
  changed: {
    state: 'not kept',
    why: `What this browser gave back is not what was stored. ${DOOR}`,
  },
};

/** A plan to be stored, and what can be undone from it. */
interface Pending {
  readonly plan: Plan;
  readonly journal: Journal | undefined;
}

/** What a keeper starts from. */
export interface Start {
  readonly id: string;
  readonly base: Base;
  /** undefined: another window writes this plan. */
  readonly lock: WriterLock | undefined;
  /** When what is shown was stored, or the plan to store if it never was. */
  readonly from: number | Plan;
  /** Called on the first edit. */
  readonly edited: () => void;
}

/**
 * Keeps one plan stored. It is made only after the plan was loaded, or for one that is new, so it cannot write over what
 * it has not seen. It holds the newest plan it was given until that is stored, whatever goes wrong.
 */
export class Keeper {
  readonly id: string;
  readonly #world: World;
  readonly #store: Store;
  readonly #state: Subject<KeepState>;
  readonly #news: NewsLine;
  readonly #heard = new Set<(news: News) => void>();
  readonly #edited: () => void;
  readonly #stopHiding: () => void;
  #base: Base;
  #lock: WriterLock | undefined;
  #pending: Pending | undefined;
  #saving: Promise<void> | undefined;
  #stopWaiting: () => void = () => undefined;

  constructor(world: World, store: Store, start: Start) {
    this.id = start.id;
    this.#world = world;
    this.#store = store;
    this.#base = start.base;
    this.#edited = start.edited;
    const { from } = start;
    const kept: KeepState = typeof from === 'number' ? { state: 'kept', when: from } : KEEPING;
    this.#state = new Subject(start.lock === undefined ? ELSEWHERE : kept);
    this.#news = newsLine(world, (news) => this.#hear(news));
    this.#stopHiding = world.onHide(() => void this.flush());
    this.#hold(start.lock);
    if (typeof from !== 'number') this.#take({ plan: from, journal: undefined });
  }

  get state(): Observable<KeepState> {
    return this.#state;
  }

  /** Takes an edited plan and stores it once the edits pause, with what can be undone from it. */
  keep(plan: Plan, journal?: Journal): void {
    this.#edited();
    this.#take({ plan, journal });
  }

  #take(pending: Pending): void {
    this.#pending = pending;
    this.#stopWaiting();
    if (this.#lock === undefined) {
      if (this.#state.value.state !== 'not kept') this.#state.set(CLOSED);
      return;
    }
    this.#state.set(KEEPING);
    this.#stopWaiting = this.#world.clock.after(PAUSE, () => void this.flush());
  }

  /** Stores now what is not stored yet, also what could not be before. Never fails: the state says how it went. */
  flush(): Promise<void> {
    this.#stopWaiting();
    this.#saving ??= this.#saveAll().finally(() => {
      this.#saving = undefined;
    });
    return this.#saving;
  }

  /** Hears of saves of this plan in other windows; gives back how to stop that. */
  onNews(listener: (news: News) => void): () => void {
    this.#heard.add(listener);
    return () => {
      this.#heard.delete(listener);
    };
  }

  /** Takes the right to write from whichever window has it. What is shown here is then stored over the rest. */
  async takeOver(plan: Plan, journal?: Journal): Promise<void> {
    const lock = this.#lock ?? (await writerLock(this.#world, this.id, true));
    if (lock === undefined) return;
    try {
      this.#base = await this.#store.use((database) => readBase(database, this.id));
    } catch (error) {
      lock.release();
      this.#lock = undefined;
      this.#state.set({ state: 'not kept', why: `${failureSentence(error)} ${DOOR}` });
      return;
    }
    if (lock !== this.#lock) this.#hold(lock);
    this.#take({ plan, journal });
    await this.flush();
  }

  /** Stores what is left and lets go of the plan. */
  async close(): Promise<void> {
    await this.flush();
    this.#stopHiding();
    this.#news.close();
    this.#lock?.release();
    this.#lock = undefined;
  }

  #hold(lock: WriterLock | undefined): void {
    this.#lock = lock;
    void lock?.lost.then(() => {
      if (this.#lock !== lock) return;
      this.#lock = undefined;
      this.#stopWaiting();
      this.#state.set(TAKEN);
    });
  }

  #hear(news: News): void {
    if (news.plan !== this.id) return;
    if (news.schema > CURRENT_VERSION) {
      this.#stop(WHY.newer);
      return;
    }
    for (const listener of [...this.#heard]) listener(news);
  }

  /** Gives up writing until somebody takes over again. */
  #stop(state: KeepState): void {
    this.#lock?.release();
    this.#lock = undefined;
    this.#stopWaiting();
    this.#state.set(state);
  }

  async #saveAll(): Promise<void> {
    while (this.#pending !== undefined && this.#lock !== undefined) {
      const pending = this.#pending;
      this.#state.set(KEEPING);
      const state = await this.#save(pending);
      // The right to write was lost meanwhile, and the state already says so.
      if (this.#lock === undefined) return;
      if (state.state !== 'kept') {
        if (state === WHY.overtaken || state === WHY.newer) this.#stop(state);
        else this.#state.set(state);
        return;
      }
      if (this.#pending !== pending) continue;
      this.#pending = undefined;
      this.#state.set(state);
    }
  }

  async #save({ plan, journal }: Pending): Promise<KeepState> {
    const text = writePlan(plan);
    const opened = openPlan(text);
    if (!opened.ok)
      return { state: 'not kept', why: `As it stands the plan could not be opened again: ${opened.why}` };
    const base = this.#base;
    const when = this.#world.clock.now();
    const record = recordOf(this.id, plan.title, text, CURRENT_VERSION, base.serial + 1, when);
    try {
      const beside = journal === undefined ? undefined : writeJournal(journal);
      const saved = await this.#store.use((database) => save(database, record, base, beside));
      if (!saved.ok) {
        if (saved.why === 'changed') this.#base = saved.base;
        return WHY[saved.why];
      }
      this.#base = saved.base;
      this.#news.tell({ plan: this.id, serial: record.serial, when });
      return { state: 'kept', when };
    } catch (error) {
      return { state: 'not kept', why: `${failureSentence(error)} ${DOOR}` };
    }
  }
}
