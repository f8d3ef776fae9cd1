import { type Opened, openPlan, type Reason } from '../../plan/file/open-plan.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Journal } from '../../session/journal.ts';
import { checksum } from './checksum.ts';
import { failureSentence } from './failure.ts';
import { readJournal } from './journal-text.ts';
import { Keeper } from './keeper.ts';
import { type Observable, Subject } from './observable.ts';
import { baseOf, NOTHING, rangeOf } from './save.ts';
import { type Database, Store } from './store.ts';
import { byAge, isSound, type Stored, type StoredSlot } from './stored.ts';
import type { World } from './world.ts';
import { writerLock } from './writer-lock.ts';

/** What the browser answered when it was asked not to clear the store by itself. */
export type Persistence = 'not asked' | 'granted' | 'refused' | 'cannot be asked';

export interface KeptPlan {
  readonly id: string;
  readonly title: string;
  /** Milliseconds since 1970. */
  readonly when: number;
}

export interface Snapshot {
  readonly serial: number;
  readonly title: string;
  readonly when: number;
}

export type Shelved<T> = ({ readonly ok: true } & T) | { readonly ok: false; readonly why: string };

/** A plan as it was stored; or why it cannot be shown, with every text that is stored of it, newest first, untouched. */
export type Read =
  | {
      readonly ok: true;
      readonly plan: Plan;
      readonly notes: readonly string[];
      readonly when: number;
      /** What could be undone when it was stored, as far as that is still sound. */
      readonly journal: Journal | undefined;
    }
  | {
      readonly ok: false;
      readonly reason: Reason | 'not there' | 'store failed';
      readonly why: string;
      readonly stored: readonly string[];
    };

export type Opening = (Read & { ok: true; keeper: Keeper }) | (Read & { ok: false });

interface Records {
  readonly slots: readonly StoredSlot[];
  readonly snapshots: readonly Stored[];
}

const recordsOf = async (database: Database, id: string): Promise<Records> => ({
  slots: await database.getAll('slots', rangeOf(id)),
  snapshots: await database.getAll('snapshots', rangeOf(id)),
});

const textsOf = ({ slots, snapshots }: Records): readonly string[] => [
  ...new Set([...slots, ...snapshots].sort(byAge).map((it) => String(it.text))),
];

const FORGETS =
  'This browser stores nothing for this page, as in a private window: a plan lasts only as long as the window. Save it as a file.';

/** The journal beside a save; a damaged one costs the undo and nothing else. */
function journalOf({ journal, text }: Stored & Partial<StoredSlot>, plan: Plan): Journal | undefined {
  if (journal === undefined || journal.check !== checksum(journal.text)) return undefined;
  return readJournal(journal.text, text, plan);
}

/** The newest save that is as it was written, with a note when a newer one is not. */
function readRecords(records: Records): Read {
  const all = [...records.slots, ...records.snapshots].sort(byAge);
  const stored = textsOf(records);
  const newest = all[0];
  if (newest === undefined) {
    return { ok: false, reason: 'not there', why: 'Nothing is stored of this plan here.', stored };
  }
  const sound = all.find(isSound);
  if (sound === undefined) {
    return { ok: false, reason: 'damaged', why: 'Every save of this plan was damaged in the store.', stored };
  }
  const opened = openPlan(sound.text);
  if (!opened.ok) return { ok: false, reason: opened.reason, why: opened.why, stored };
  const notes =
    sound.serial === newest.serial
      ? opened.notes
      : [
          'The newest save of this plan was damaged in the store; this is the one before it.',
          ...opened.notes,
        ];
  return { ok: true, plan: opened.plan, notes, when: sound.when, journal: journalOf(sound, opened.plan) };
}

/** The plans kept in this browser. */
export class Shelf {
  readonly #world: World;
  readonly #store: Store;
  readonly #persistence = new Subject<Persistence>('not asked');
  #asked = false;

  constructor(world: World) {
    this.#world = world;
    this.#store = new Store(world.indexedDB);
  }

  /** Asked once, after the first edit of any plan. */
  get persistence(): Observable<Persistence> {
    return this.#persistence;
  }

  /** Whether this browser stores anything at all, found out by doing so. */
  async probe(): Promise<Shelved<object>> {
    const id = this.#world.newId();
    const when = this.#world.clock.now();
    try {
      const back = await this.#store.use(async (database) => {
        await database.put('probe', { id, when });
        const found = await database.get('probe', id);
        await database.delete('probe', id);
        return found;
      });
      return back?.when === when ? { ok: true } : { ok: false, why: FORGETS };
    } catch {
      return { ok: false, why: FORGETS };
    }
  }

  /** Every plan there is, newest first. */
  async list(): Promise<Shelved<{ readonly plans: readonly KeptPlan[] }>> {
    try {
      const slots = await this.#store.use((database) => database.getAll('slots'));
      const newest = new Map<string, StoredSlot>();
      for (const slot of slots) {
        const other = newest.get(slot.plan);
        if (other === undefined || byAge(slot, other) < 0) newest.set(slot.plan, slot);
      }
      const plans = [...newest.values()]
        .sort((a, b) => b.when - a.when)
        .map(({ plan, title, when }) => ({ id: plan, title, when }));
      return { ok: true, plans };
    } catch (error) {
      return { ok: false, why: failureSentence(error) };
    }
  }

  /** Begins to keep a plan that was not kept before. */
  async create(plan: Plan): Promise<Keeper> {
    const id = this.#world.newId();
    const lock = await writerLock(this.#world, id);
    return new Keeper(this.#world, this.#store, { id, base: NOTHING, lock, from: plan, edited: this.#ask });
  }

  /** Opens a kept plan and keeps it from then on. What cannot be opened is left as it is, and nothing is written. */
  async open(id: string): Promise<Opening> {
    const lock = await writerLock(this.#world, id);
    const { read, records } = await this.#read(id);
    if (!read.ok) {
      lock?.release();
      return read;
    }
    const keeper = new Keeper(this.#world, this.#store, {
      id,
      base: baseOf(records.slots),
      lock,
      from: read.when,
      edited: this.#ask,
    });
    return { ...read, keeper };
  }

  /** A kept plan as it is now stored, to look at. */
  async read(id: string): Promise<Read> {
    return (await this.#read(id)).read;
  }

  /** Takes a plan and its snapshots off the shelf, unless it is open in any window. */
  async remove(id: string): Promise<Shelved<object>> {
    const lock = await writerLock(this.#world, id);
    if (lock === undefined) {
      return { ok: false, why: 'This plan is open in a window: close it there, then take it away.' };
    }
    try {
      await this.#store.use(async (database) => {
        const transaction = database.transaction(['slots', 'snapshots'], 'readwrite', {
          durability: 'strict',
        });
        await transaction.objectStore('slots').delete(rangeOf(id));
        await transaction.objectStore('snapshots').delete(rangeOf(id));
        await transaction.done;
      });
      return { ok: true };
    } catch (error) {
      return { ok: false, why: failureSentence(error) };
    } finally {
      lock.release();
    }
  }

  /** The last saves of a plan, newest first. */
  async snapshots(id: string): Promise<Shelved<{ readonly snapshots: readonly Snapshot[] }>> {
    try {
      const all = await this.#store.use((database) => database.getAll('snapshots', rangeOf(id)));
      const snapshots = all.sort(byAge).map(({ serial, title, when }) => ({ serial, title, when }));
      return { ok: true, snapshots };
    } catch (error) {
      return { ok: false, why: failureSentence(error) };
    }
  }

  /** One of the last saves of a plan. */
  async snapshot(id: string, serial: number): Promise<Opened | { readonly ok: false; readonly why: string }> {
    try {
      const found = await this.#store.use((database) => database.get('snapshots', [id, serial]));
      if (found === undefined)
        return { ok: false, why: 'This save is no longer there: only the last 20 are.' };
      return isSound(found)
        ? openPlan(found.text)
        : { ok: false, why: 'This save was damaged in the store.' };
    } catch (error) {
      return { ok: false, why: failureSentence(error) };
    }
  }

  close(): Promise<void> {
    return this.#store.close();
  }

  async #read(id: string): Promise<{ readonly read: Read; readonly records: Records }> {
    try {
      const records = await this.#store.use((database) => recordsOf(database, id));
      return { read: readRecords(records), records };
    } catch (error) {
      const why = failureSentence(error);
      return {
        read: { ok: false, reason: 'store failed', why, stored: [] },
        records: { slots: [], snapshots: [] },
      };
    }
  }

  readonly #ask = (): void => {
    if (this.#asked) return;
    this.#asked = true;
    const { storage } = this.#world;
    if (storage === undefined) {
      this.#persistence.set('cannot be asked');
      return;
    }
    storage.persist().then(
      (granted) => this.#persistence.set(granted ? 'granted' : 'refused'),
      () => this.#persistence.set('refused'),
    );
  };
}
