import { checksum } from './checksum.ts';
import type { Database } from './store.ts';
import { byAge, isSound, type Slot, type Stored, type StoredSlot } from './stored.ts';

/** Snapshots kept of each plan. */
export const MOST_SNAPSHOTS = 20;

/** All that one plan has in a table. */
export const rangeOf = (plan: string): IDBKeyRange => IDBKeyRange.bound([plan], [plan, []]);

/** What a save starts from: the newest record there was, and the slot of the newest sound one. */
export interface Base {
  readonly serial: number;
  readonly sound: Slot | undefined;
}

export const NOTHING: Base = { serial: 0, sound: undefined };

/** The base that a plan's slots make. */
export const baseOf = (slots: readonly StoredSlot[]): Base => ({
  serial: Math.max(0, ...slots.map((it) => it.serial)),
  sound: slots.filter(isSound).sort(byAge)[0]?.slot,
});

export const readBase = async (database: Database, plan: string): Promise<Base> =>
  baseOf(await database.getAll('slots', rangeOf(plan)));

export type Saved =
  | { readonly ok: true; readonly base: Base }
  /** `base` is what lies there now, so that a later save can start from it. */
  | { readonly ok: false; readonly why: 'overtaken' | 'newer' | 'changed'; readonly base: Base };

export const recordOf = (
  plan: string,
  title: string,
  text: string,
  schema: number,
  serial: number,
  when: number,
): Stored => ({ plan, serial, schema, title, text, check: checksum(text), when });

const isSame = (a: Stored | undefined, b: Stored): boolean =>
  a !== undefined && a.serial === b.serial && a.text === b.text && isSound(a);

/**
 * Writes a record in one transaction, waits until the disk has it, then reads it back and compares. Writes nothing when
 * the plan is no longer as `base` says: another window has saved it since, or a newer workbook has. Doing it twice comes
 * to the same.
 */
export async function save(database: Database, record: Stored, base: Base, journal?: string): Promise<Saved> {
  const slot: Slot = base.sound === 0 ? 1 : 0;
  const beside = journal === undefined ? {} : { journal: { text: journal, check: checksum(journal) } };
  const refused = await write(database, { ...record, slot, ...beside }, base);
  if (refused !== undefined) return refused;
  const back = await database.get('slots', [record.plan, slot]);
  return isSame(back, record)
    ? { ok: true, base: { serial: record.serial, sound: slot } }
    : { ok: false, why: 'changed', base: { serial: record.serial, sound: base.sound } };
}

async function write(database: Database, record: StoredSlot, base: Base): Promise<Saved | undefined> {
  const transaction = database.transaction(['slots', 'snapshots'], 'readwrite', { durability: 'strict' });
  // Its end is waited for below; until then a failure must not count as one that nobody looks at.
  transaction.done.catch(() => undefined);
  try {
    const slots = transaction.objectStore('slots');
    const before = await slots.getAll(rangeOf(record.plan));
    const there = baseOf(before);
    if (before.some((it) => it.schema > record.schema)) return { ok: false, why: 'newer', base: there };
    const done = before.some((it) => it.slot === record.slot && isSame(it, record));
    if (!done) {
      if (there.serial !== base.serial) return { ok: false, why: 'overtaken', base: there };
      await slots.put(record);
      const { slot: _slot, journal: _journal, ...snapshot } = record;
      const snapshots = transaction.objectStore('snapshots');
      await snapshots.put(snapshot);
      const keys = await snapshots.getAllKeys(rangeOf(record.plan));
      for (const key of keys.slice(0, -MOST_SNAPSHOTS)) await snapshots.delete(key);
    }
  } catch (error) {
    // All or nothing: what was already put into this transaction goes with it.
    try {
      transaction.abort();
    } catch {
      // It has ended already.
    }
    throw error;
  }
  await transaction.done;
  return undefined;
}
