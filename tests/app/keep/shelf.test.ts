import { beforeEach, describe, expect, it, vi } from 'vitest';
import { checksum } from '../../../src/app/keep/checksum.ts';
import { Shelf } from '../../../src/app/keep/shelf.ts';
import type { StoredSlot } from '../../../src/app/keep/stored.ts';
import { writePlan } from '../../../src/plan/file/write-plan.ts';
import { newPlan } from '../../../src/plan/new-plan.ts';
import { FakeBrowser } from './fake-world.ts';

let browser: FakeBrowser;
let shelf: Shelf;
beforeEach(() => {
  browser = new FakeBrowser();
  shelf = new Shelf(browser.window());
});

/** Keeps a plan under each title in turn, and closes it. */
async function kept(...titles: string[]): Promise<string> {
  const [first = '', ...rest] = titles;
  const keeper = await shelf.create(newPlan(first));
  await keeper.flush();
  for (const title of rest) {
    browser.clock.move(1_000);
    keeper.keep(newPlan(title));
    await keeper.flush();
  }
  await keeper.close();
  return keeper.id;
}

/** Changes what is stored behind the workbook's back. */
async function damage(
  table: 'slots' | 'snapshots',
  change: (it: StoredSlot) => StoredSlot | undefined,
): Promise<void> {
  const all = await browser.raw<StoredSlot[]>('readonly', table, (store) => store.getAll());
  for (const it of all) {
    const changed = change(it);
    if (changed !== undefined) await browser.raw('readwrite', table, (store) => store.put(changed));
  }
}

const torn = (it: StoredSlot): StoredSlot => ({ ...it, text: it.text.slice(0, -10) });

/** Everything in the store, to see that it was left alone. */
const all = async () => [
  await browser.raw('readonly', 'slots', (store) => store.getAll()),
  await browser.raw('readonly', 'snapshots', (store) => store.getAll()),
];

describe('the shelf', () => {
  it('finds out by trying whether anything is stored', async () => {
    expect(await shelf.probe()).toEqual({ ok: true });
    expect(await browser.raw('readonly', 'probe', (store) => store.getAll())).toEqual([]);
  });

  it('lists its plans, newest first, by their last names', async () => {
    const sloop = await kept('Sloop', 'Sloop refitted');
    browser.clock.move(5_000);
    const ketch = await kept('Ketch');
    const list = await shelf.list();
    expect(list.ok && list.plans).toEqual([
      { id: ketch, title: 'Ketch', when: 1_006_000 },
      { id: sloop, title: 'Sloop refitted', when: 1_001_000 },
    ]);
  });

  it('opens a plan as it was stored, and writes nothing by that', async () => {
    const id = await kept('Sloop', 'Sloop refitted');
    const before = await all();
    const opened = await shelf.open(id);
    if (!opened.ok) throw new Error(opened.why);
    expect(opened.plan).toEqual(newPlan('Sloop refitted'));
    expect(opened.notes).toEqual([]);
    expect(opened.keeper.state.value).toEqual({ state: 'kept', when: 1_001_000 });
    browser.clock.move(10_000);
    await opened.keeper.close();
    expect(await all()).toEqual(before);
  });

  it('writes nothing before a plan is loaded, however long that takes', async () => {
    const id = await kept('Sloop');
    const put = vi.spyOn(IDBObjectStore.prototype, 'put');
    const slow = browser.window();
    let go: () => void = () => undefined;
    const gate = new Promise<void>((resolve) => {
      go = resolve;
    });
    const locks = {
      request: async (...given: [string, object, () => Promise<void>]) => {
        await gate;
        return browser.locks.request(...given);
      },
    };
    const opening = new Shelf({ ...slow, locks: locks as unknown as LockManager }).open(id);
    // Neither the passing of time nor a hidden page can write: there is nothing yet that could.
    slow.hide();
    browser.clock.move(900);
    expect(put).not.toHaveBeenCalled();
    go();
    const opened = await opening;
    expect(opened.ok && opened.plan.title).toBe('Sloop');
    expect(put).not.toHaveBeenCalled();
    vi.restoreAllMocks();
  });

  it('goes back one save when the newest was damaged, says so, and writes beside it', async () => {
    const id = await kept('One', 'Two', 'Three');
    await damage('slots', (it) => (it.title === 'Three' ? torn(it) : undefined));
    await damage('snapshots', (it) => (it.title === 'Three' ? torn(it) : undefined));
    const opened = await shelf.open(id);
    if (!opened.ok) throw new Error(opened.why);
    expect(opened.plan.title).toBe('Two');
    expect(opened.notes).toEqual([
      'The newest save of this plan was damaged in the store; this is the one before it.',
    ]);
    opened.keeper.keep(newPlan('Four'));
    await opened.keeper.flush();
    expect(opened.keeper.state.value.state).toBe('kept');
    const slots = await browser.raw<StoredSlot[]>('readonly', 'slots', (store) => store.getAll());
    expect(slots.map((it) => it.title).sort()).toEqual(['Four', 'Two']);
  });

  it('takes the newest snapshot when both slots were damaged', async () => {
    const id = await kept('One', 'Two', 'Three');
    await damage('slots', torn);
    const read = await shelf.read(id);
    expect(read.ok && read.plan.title).toBe('Three');
  });

  it('hands out what is stored, untouched, when nothing of it can be opened', async () => {
    const id = await kept('One', 'Two');
    await damage('slots', torn);
    await damage('snapshots', torn);
    const before = await all();
    const opened = await shelf.open(id);
    expect(opened).toMatchObject({ ok: false, reason: 'damaged' });
    expect(opened.ok ? [] : opened.stored).toEqual([
      writePlan(newPlan('Two')).slice(0, -10),
      writePlan(newPlan('One')).slice(0, -10),
    ]);
    expect(await all()).toEqual(before);
    // The right to write was given back.
    expect((await shelf.remove(id)).ok).toBe(true);
  });

  it('tells a plan of a newer workbook from a damaged one, and leaves it alone', async () => {
    const id = await kept('One');
    await damage('slots', (it) => {
      const text = it.text.replace(/"version": \d+/, '"version": 99');
      return { ...it, serial: 7, schema: 99, text, check: checksum(text) };
    });
    const before = await all();
    expect(await shelf.open(id)).toMatchObject({ ok: false, reason: 'too new' });
    expect(await all()).toEqual(before);
  });

  it('says what is not there', async () => {
    expect(await shelf.open('nothing')).toMatchObject({ ok: false, reason: 'not there', stored: [] });
    expect(await shelf.list()).toEqual({ ok: true, plans: [] });
  });

  it('says that the store failed, rather than that there is nothing', async () => {
    const id = await kept('One');
    const broken = new Shelf(
      browser.window({
        indexedDB: {
          open: () => {
            throw new DOMException('Internal error opening backing store', 'UnknownError');
          },
        },
      }),
    );
    expect(await broken.open(id)).toMatchObject({ ok: false, reason: 'store failed' });
    expect(await broken.snapshots(id)).toMatchObject({ ok: false });
    expect(await broken.remove(id)).toMatchObject({ ok: false });
  });

  it('makes way for a window that wants to delete the store, and opens it anew after that', async () => {
    const id = await kept('One');
    await new Promise<void>((resolve, reject) => {
      const request = browser.factory.deleteDatabase('sternmount');
      request.onsuccess = () => resolve();
      request.onerror = () => reject(request.error);
      request.onblocked = () => reject(new Error('blocked'));
    });
    expect(await shelf.read(id)).toMatchObject({ ok: false, reason: 'not there' });
    expect(await shelf.list()).toEqual({ ok: true, plans: [] });
  });
});
