import { beforeEach, describe, expect, it, vi } from 'vitest';
import type { Keeper } from '../../../src/app/keep/keeper.ts';
import { Shelf } from '../../../src/app/keep/shelf.ts';
import type { World } from '../../../src/app/keep/world.ts';
import { CURRENT_VERSION } from '../../../src/plan/file/migrations.ts';
import { newPlan } from '../../../src/plan/new-plan.ts';
import { FakeBrowser } from './fake-world.ts';

let browser: FakeBrowser;
beforeEach(() => {
  browser = new FakeBrowser();
});

const titled = (title: string) => newPlan(title);

async function firstWindow(without: Partial<World> = {}): Promise<{ shelf: Shelf; keeper: Keeper }> {
  const shelf = new Shelf(browser.window(without));
  const keeper = await shelf.create(titled('First'));
  await keeper.flush();
  return { shelf, keeper };
}

/** Opens a plan in another window, which waits a second for the right to write where somebody has it. */
async function secondWindow(id: string, without: Partial<World> = {}): Promise<Keeper> {
  const opening = new Shelf(browser.window(without)).open(id);
  browser.clock.move(1_000);
  const opened = await opening;
  if (!opened.ok) throw new Error(opened.why);
  return opened.keeper;
}

const storedTitle = async (id: string) => {
  const read = await new Shelf(browser.window()).read(id);
  return read.ok ? read.plan.title : undefined;
};

const elsewhere = { state: 'not kept', elsewhere: true };

describe('two windows on one plan', () => {
  it('let the first write, and the second say that it does not', async () => {
    const { keeper } = await firstWindow();
    const second = await secondWindow(keeper.id);
    expect(second.state.value).toMatchObject(elsewhere);
    second.keep(titled('Second'));
    browser.clock.move(1_000);
    await second.flush();
    expect(second.state.value).toMatchObject(elsewhere);
    expect(await storedTitle(keeper.id)).toBe('First');
    keeper.keep(titled('First again'));
    await keeper.flush();
    expect(keeper.state.value.state).toBe('kept');
  });

  it('let the second take over, and the first say so', async () => {
    const { keeper } = await firstWindow();
    const second = await secondWindow(keeper.id);
    keeper.keep(titled('Newer'));
    await keeper.flush();
    await second.takeOver(titled('Second'));
    expect(second.state.value.state).toBe('kept');
    expect(await storedTitle(keeper.id)).toBe('Second');
    expect(keeper.state.value).toMatchObject(elsewhere);
    keeper.keep(titled('Lost'));
    browser.clock.move(1_000);
    await keeper.flush();
    expect(await storedTitle(keeper.id)).toBe('Second');
    // What the first had written is among the last saves.
    const kept = await new Shelf(browser.window()).snapshots(keeper.id);
    expect(kept.ok && kept.snapshots.map((it) => it.title)).toEqual(['Second', 'Newer', 'First']);
    await keeper.takeOver(titled('Back'));
    expect(await storedTitle(keeper.id)).toBe('Back');
    expect(second.state.value).toMatchObject(elsewhere);
  });

  it('let the second write when the first closes while it waits, as on a reload', async () => {
    const { keeper } = await firstWindow();
    const opening = new Shelf(browser.window()).open(keeper.id);
    await keeper.close();
    const opened = await opening;
    expect(opened.ok && opened.keeper.state.value.state).toBe('kept');
  });

  it('hear of each other’s saves', async () => {
    const { keeper } = await firstWindow();
    const other = await firstWindow();
    const second = await secondWindow(keeper.id);
    const heard = vi.fn();
    const stop = second.onNews(heard);
    other.keeper.keep(titled('Other plan'));
    await other.keeper.flush();
    expect(heard).not.toHaveBeenCalled();
    keeper.keep(titled('News'));
    await keeper.flush();
    expect(heard).toHaveBeenCalledExactlyOnceWith({
      plan: keeper.id,
      serial: 2,
      schema: CURRENT_VERSION,
      when: browser.clock.now(),
    });
    stop();
    keeper.keep(titled('More'));
    await keeper.flush();
    expect(heard).toHaveBeenCalledTimes(1);
  });

  it('without locks, let none write over what it has not seen', async () => {
    const without = { locks: undefined };
    const { keeper } = await firstWindow(without);
    const second = await secondWindow(keeper.id, without);
    expect(second.state.value.state).toBe('kept');
    keeper.keep(titled('From the first'));
    await keeper.flush();
    second.keep(titled('From the second'));
    await second.flush();
    expect(second.state.value).toMatchObject(elsewhere);
    expect(await storedTitle(keeper.id)).toBe('From the first');
    await second.takeOver(titled('From the second'));
    expect(second.state.value.state).toBe('kept');
    expect(await storedTitle(keeper.id)).toBe('From the second');
    keeper.keep(titled('Late'));
    await keeper.flush();
    expect(keeper.state.value).toMatchObject(elsewhere);
    expect(await storedTitle(keeper.id)).toBe('From the second');
  });

  it('stop the older one when a newer workbook is at work', async () => {
    const { keeper } = await firstWindow();
    const line = browser.channels.open('sternmount-plans');
    line.postMessage({ plan: 'another', serial: 9, schema: CURRENT_VERSION + 1, when: 0 });
    line.postMessage({ nonsense: true });
    expect(keeper.state.value.state).toBe('kept');
    line.postMessage({ plan: keeper.id, serial: 9, schema: CURRENT_VERSION + 1, when: 0 });
    expect(keeper.state.value).toMatchObject({
      state: 'not kept',
      why: expect.stringContaining('newer version') as string,
    });
    keeper.keep(titled('Older'));
    browser.clock.move(1_000);
    await keeper.flush();
    expect(await storedTitle(keeper.id)).toBe('First');
  });

  it('leave a save of a newer workbook alone', async () => {
    const { keeper } = await firstWindow();
    const record = (await browser.raw<object[]>('readonly', 'slots', (store) => store.getAll()))[0];
    const newer = { ...record, slot: 1, serial: 2, schema: CURRENT_VERSION + 1 };
    await browser.raw('readwrite', 'slots', (store) => store.put(newer));
    keeper.keep(titled('Older'));
    await keeper.flush();
    expect(keeper.state.value).toMatchObject({
      state: 'not kept',
      why: expect.stringContaining('newer version') as string,
    });
    expect(await browser.raw('readonly', 'slots', (store) => store.getAll())).toEqual([record, newer]);
  });

  it('keep a plan that is open from being taken away', async () => {
    const { keeper } = await firstWindow();
    const shelf = new Shelf(browser.window());
    const removing = shelf.remove(keeper.id);
    browser.clock.move(1_000);
    expect(await removing).toMatchObject({
      ok: false,
      why: expect.stringContaining('open in a window') as string,
    });
    await keeper.close();
    expect(await shelf.remove(keeper.id)).toEqual({ ok: true });
    expect(await shelf.read(keeper.id)).toMatchObject({ ok: false, reason: 'not there' });
    expect(await browser.raw('readonly', 'snapshots', (store) => store.getAll())).toEqual([]);
  });
});
