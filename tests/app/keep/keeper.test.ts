import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Keeper } from '../../../src/app/keep/keeper.ts';
import { Shelf } from '../../../src/app/keep/shelf.ts';
import type { StoredSlot } from '../../../src/app/keep/stored.ts';
import { newPlan } from '../../../src/plan/new-plan.ts';
import type { Plan } from '../../../src/plan/plan.ts';
import { FakeBrowser } from './fake-world.ts';

let browser: FakeBrowser;
beforeEach(() => {
  browser = new FakeBrowser();
});
afterEach(() => {
  vi.restoreAllMocks();
});

const titled = (title: string): Plan => newPlan(title);

/** Waits until a keeper has come to an end with saving. */
async function settled(keeper: Keeper): Promise<void> {
  await keeper.flush();
}

const slots = () => browser.raw<StoredSlot[]>('readonly', 'slots', (store) => store.getAll());

async function created(
  title = 'First',
): Promise<{ shelf: Shelf; keeper: Keeper; world: ReturnType<FakeBrowser['window']> }> {
  const world = browser.window();
  const shelf = new Shelf(world);
  const keeper = await shelf.create(titled(title));
  await settled(keeper);
  return { shelf, keeper, world };
}

/** What another window would read. */
async function storedTitle(id: string): Promise<string | undefined> {
  const read = await new Shelf(browser.window()).read(id);
  return read.ok ? read.plan.title : undefined;
}

describe('keeping a plan', () => {
  it('stores a new plan, and says so with the time', async () => {
    const world = browser.window();
    const keeper = await new Shelf(world).create(titled('First'));
    expect(keeper.state.value).toEqual({ state: 'keeping' });
    browser.clock.move(300);
    await settled(keeper);
    expect(keeper.state.value).toEqual({ state: 'kept', when: 1_000_300 });
    expect(await storedTitle(keeper.id)).toBe('First');
  });

  it('waits 300 ms after the last edit, and stores that one', async () => {
    const { keeper } = await created();
    const states: string[] = [];
    keeper.state.subscribe(() => states.push(keeper.state.value.state));
    const put = vi.spyOn(IDBObjectStore.prototype, 'put');
    for (const title of ['A', 'B', 'C']) {
      keeper.keep(titled(title));
      browser.clock.move(299);
    }
    expect(put).not.toHaveBeenCalled();
    browser.clock.move(1);
    await settled(keeper);
    // One save: a slot and a snapshot.
    expect(put).toHaveBeenCalledTimes(2);
    expect(await storedTitle(keeper.id)).toBe('C');
    expect(states).toEqual(['keeping', 'kept']);
  });

  it('stores at once when the page is hidden', async () => {
    const { keeper, world } = await created();
    keeper.keep(titled('Left in a hurry'));
    world.hide();
    await vi.waitFor(() => expect(keeper.state.value.state).toBe('kept'));
    expect(await storedTitle(keeper.id)).toBe('Left in a hurry');
  });

  it('goes on with what came while it was saving, and is kept only then', async () => {
    const { keeper } = await created();
    keeper.keep(titled('A'));
    const saving = keeper.flush();
    keeper.keep(titled('B'));
    expect(keeper.state.value.state).toBe('keeping');
    await saving;
    expect(keeper.state.value.state).toBe('kept');
    expect(await storedTitle(keeper.id)).toBe('B');
  });

  it('asks for strict durability', async () => {
    const { keeper } = await created();
    const transaction = vi.spyOn(IDBDatabase.prototype, 'transaction');
    keeper.keep(titled('A'));
    await settled(keeper);
    const writes = transaction.mock.calls.filter(([, mode]) => mode === 'readwrite');
    expect(writes.map(([, , options]) => options)).toEqual([{ durability: 'strict' }]);
  });

  it('writes its two slots in turn', async () => {
    const { keeper } = await created('1');
    const seen: [number, string][][] = [];
    for (const title of ['2', '3', '4']) {
      keeper.keep(titled(title));
      await settled(keeper);
      seen.push((await slots()).map((it) => [it.slot, it.title]));
    }
    expect(seen).toEqual([
      [
        [0, '1'],
        [1, '2'],
      ],
      [
        [0, '3'],
        [1, '2'],
      ],
      [
        [0, '3'],
        [1, '4'],
      ],
    ]);
  });

  it('keeps the last 20 saves of each plan', async () => {
    const { shelf, keeper } = await created('1');
    const other = await shelf.create(titled('other'));
    await settled(other);
    for (let i = 2; i <= 25; i++) {
      keeper.keep(titled(String(i)));
      await settled(keeper);
    }
    const kept = await shelf.snapshots(keeper.id);
    expect(kept.ok && kept.snapshots.map((it) => it.title)).toEqual(
      Array.from({ length: 20 }, (_, i) => String(25 - i)),
    );
    const tenth = await shelf.snapshot(keeper.id, 10);
    expect(tenth.ok && tenth.plan.title).toBe('10');
    expect(await shelf.snapshot(keeper.id, 5)).toMatchObject({
      ok: false,
      why: expect.stringContaining('no longer') as string,
    });
    const others = await shelf.snapshots(other.id);
    expect(others.ok && others.snapshots).toHaveLength(1);
  });

  it('says that nothing more is stored once it is closed', async () => {
    const { keeper } = await created();
    keeper.keep(titled('Last'));
    await keeper.close();
    expect(await storedTitle(keeper.id)).toBe('Last');
    keeper.keep(titled('Later'));
    browser.clock.move(1_000);
    await settled(keeper);
    expect(keeper.state.value.state).toBe('not kept');
    expect(await storedTitle(keeper.id)).toBe('Last');
  });
});

describe('asking the browser not to clear the store', () => {
  it('happens once, after the first edit', async () => {
    const { shelf, keeper } = await created();
    expect([browser.persistAsked, shelf.persistence.value]).toEqual([0, 'not asked']);
    keeper.keep(titled('A'));
    await vi.waitFor(() => expect(shelf.persistence.value).toBe('granted'));
    keeper.keep(titled('B'));
    (await shelf.create(titled('Other'))).keep(titled('Other still'));
    expect(browser.persistAsked).toBe(1);
  });

  it.each([
    ['refused', { persist: () => Promise.resolve(false) }],
    ['refused', { persist: () => Promise.reject(new TypeError('no')) }],
    ['cannot be asked', undefined],
  ] as const)('reports that it was %s', async (answer, storage) => {
    const shelf = new Shelf(browser.window({ storage }));
    (await shelf.create(titled('A'))).keep(titled('B'));
    await vi.waitFor(() => expect(shelf.persistence.value).toBe(answer));
  });
});

describe('when the store fails', () => {
  const failingPut = (error: unknown) =>
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw error;
    });

  it.each([
    ['a full store', new DOMException('', 'QuotaExceededError'), 'no room left'],
    ['a full store of old', Object.assign(new Error('x'), { code: 1014 }), 'no room left'],
    ['anything else', new Error('disk on fire'), 'refused the use of its store'],
  ])('says why, and holds the plan until it can be stored: %s', async (_what, error, why) => {
    const { keeper } = await created();
    const put = failingPut(error);
    keeper.keep(titled('Held'));
    await settled(keeper);
    expect(keeper.state.value).toMatchObject({
      state: 'not kept',
      why: expect.stringContaining(why) as string,
    });
    expect(keeper.state.value).toMatchObject({
      why: expect.stringContaining('save it as a file now') as string,
    });
    expect(await storedTitle(keeper.id)).toBe('First');
    put.mockRestore();
    await keeper.flush();
    expect(keeper.state.value.state).toBe('kept');
    expect(await storedTitle(keeper.id)).toBe('Held');
  });

  it('leaves nothing of a save that failed halfway', async () => {
    const { shelf, keeper } = await created();
    const put = IDBObjectStore.prototype.put;
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, value, key) {
      if (this.name === 'snapshots') throw new DOMException('', 'QuotaExceededError');
      return put.call(this, value, key);
    });
    keeper.keep(titled('Half'));
    await settled(keeper);
    vi.restoreAllMocks();
    expect((await slots()).map((it) => it.title)).toEqual(['First']);
    const kept = await shelf.snapshots(keeper.id);
    expect(kept.ok && kept.snapshots.map((it) => it.title)).toEqual(['First']);
  });

  it('opens the store anew, once, when its handle has died', async () => {
    const { keeper } = await created();
    const before = browser.opened;
    browser.handles.at(-1)?.close();
    keeper.keep(titled('After sleep'));
    await settled(keeper);
    expect(keeper.state.value.state).toBe('kept');
    expect(browser.opened).toBe(before + 1);
    expect(await storedTitle(keeper.id)).toBe('After sleep');
  });

  it('gives up when the new handle is dead as well', async () => {
    const { keeper } = await created();
    const before = browser.opened;
    const transaction = vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(() => {
      throw new DOMException('The connection is closing.', 'InvalidStateError');
    });
    keeper.keep(titled('Never'));
    await settled(keeper);
    expect(transaction).toHaveBeenCalledTimes(2);
    expect(browser.opened).toBe(before + 1);
    expect(keeper.state.value.state).toBe('not kept');
  });

  it('does not try a second time when the store is full', async () => {
    const { keeper } = await created();
    const put = failingPut(new DOMException('', 'QuotaExceededError'));
    keeper.keep(titled('A'));
    await settled(keeper);
    expect(put).toHaveBeenCalledTimes(1);
  });

  it('reads back what it wrote, and does not call kept what came back changed', async () => {
    const { keeper } = await created();
    const put = IDBObjectStore.prototype.put;
    const spy = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (
      this: IDBObjectStore,
      value: StoredSlot,
      key,
    ) {
      return put.call(this, this.name === 'slots' ? { ...value, text: value.text.slice(1) } : value, key);
    });
    keeper.keep(titled('Torn'));
    await settled(keeper);
    expect(keeper.state.value).toMatchObject({
      state: 'not kept',
      why: expect.stringContaining('not what was stored') as string,
    });
    spy.mockRestore();
    // The sound save is still there, and the next one goes beside it, not over it.
    expect((await slots()).find((it) => it.slot === 0)?.title).toBe('First');
    await keeper.flush();
    expect(keeper.state.value.state).toBe('kept');
    expect((await slots()).map((it) => it.title)).toEqual(['First', 'Torn']);
  });

  it('keeps nothing that could not be opened again', async () => {
    const { keeper } = await created();
    keeper.keep({ ...titled('Large'), notes: 'x'.repeat(5_000) });
    await settled(keeper);
    expect(keeper.state.value).toMatchObject({
      state: 'not kept',
      why: expect.stringContaining('could not be opened again') as string,
    });
    expect(await storedTitle(keeper.id)).toBe('First');
  });

  it('says so where there is no store at all', async () => {
    const refusing = () => {
      throw new DOMException('', 'SecurityError');
    };
    const shelf = new Shelf(browser.window({ indexedDB: { open: refusing } }));
    expect(await shelf.probe()).toMatchObject({
      ok: false,
      why: expect.stringContaining('stores nothing') as string,
    });
    expect((await shelf.list()).ok).toBe(false);
    const keeper = await shelf.create(titled('A'));
    await settled(keeper);
    expect(keeper.state.value.state).toBe('not kept');
  });
});
