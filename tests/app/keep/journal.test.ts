import { beforeEach, describe, expect, it } from 'vitest';
import { MOST_STEPS, readJournal, writeJournal } from '../../../src/app/keep/journal-text.ts';
import { Shelf } from '../../../src/app/keep/shelf.ts';
import type { StoredSlot } from '../../../src/app/keep/stored.ts';
import { writePlan } from '../../../src/plan/file/write-plan.ts';
import { newPlan } from '../../../src/plan/new-plan.ts';
import { Session } from '../../../src/session/session.ts';
import { FakeBrowser } from './fake-world.ts';

let browser: FakeBrowser;
beforeEach(() => {
  browser = new FakeBrowser();
});

/** A session whose plan was edited, undone once, stored, and opened again in another window. */
async function reopened(): Promise<{
  readonly before: Session;
  readonly after: Session;
  readonly id: string;
}> {
  const before = new Session(newPlan('Sloop'));
  const shelf = new Shelf(browser.window());
  const keeper = await shelf.create(before.plan);
  before.enter('transom_rake', '-12');
  before.enter('transom_top', '905');
  before.open(newPlan('Ketch'), 'Open the ketch');
  before.enter('shim_count', '5');
  before.undo();
  keeper.keep(before.plan, before.journal);
  await keeper.close();
  const after = await open(keeper.id);
  return { before, after, id: keeper.id };
}

async function open(id: string): Promise<Session> {
  const opening = await new Shelf(browser.window()).open(id);
  if (!opening.ok) throw new Error(opening.why);
  await opening.keeper.close();
  const session = new Session(newPlan(''));
  session.load(opening.plan);
  if (opening.journal !== undefined) session.recall(opening.journal);
  return session;
}

/** Every text that undo leads to, the present one first. */
function backFrom(session: Session): string[] {
  const texts = [writePlan(session.plan)];
  while (session.undoes !== undefined) {
    session.undo();
    texts.push(writePlan(session.plan));
  }
  return texts;
}

describe('undo after a reload', () => {
  it('takes back what was done before, to the letter, and does it again', async () => {
    const { before, after } = await reopened();
    expect(after.undoes).toBe('Open the ketch');
    expect(after.redoes).toBe(before.redoes);
    after.redo();
    expect(after.value('shim_count')).toBe(5);
    after.undo();
    expect(backFrom(after)).toEqual(backFrom(before));
    expect(after.plan.title).toBe('Sloop');
  });

  it('goes on from there: an edit on top of the recalled ones is stored with them', async () => {
    const { after } = await reopened();
    after.undo();
    after.enter('transom_bottom', '45');
    const { journal, plan } = after;
    const again = readJournal(writeJournal(journal), writePlan(plan), plan);
    if (again === undefined) throw new Error('The journal was not read.');
    const third = new Session(plan);
    third.recall(again);
    expect(backFrom(third)).toEqual(backFrom(after));
  });

  it('leaves what studies are set to as it is, and gives another plan back with its own', async () => {
    const before = new Session(newPlan('Sloop'));
    before.enter('transom_rake', '-12');
    before.arrange('sweep', { input: 'shim_count' });
    before.open(newPlan('Ketch'), 'Open the ketch');
    before.enter('shim_count', '5');
    before.arrange('map', { x: 'shim_count' });
    const { journal, plan } = before;
    const read = readJournal(writeJournal(journal), writePlan(plan), plan);
    if (read === undefined) throw new Error('The journal was not read.');
    const after = new Session(plan);
    after.recall(read);
    for (const session of [before, after]) {
      session.undo();
      expect(session.plan.studies).toEqual([{ study: 'map', settings: { x: 'shim_count' } }]);
      session.arrange('odds', { share: 1 });
      session.undo();
      expect(session.plan.title).toBe('Sloop');
      expect(session.plan.studies).toEqual([{ study: 'sweep', settings: { input: 'shim_count' } }]);
      session.redo();
      expect(session.plan.title).toBe('Ketch');
      expect(session.plan.studies.map((it) => it.study)).toEqual(['map', 'odds']);
    }
    expect(backFrom(after)).toEqual(backFrom(before));
  });

  it('is lost alone when the stored journal is damaged', async () => {
    const { id } = await reopened();
    for (const slot of await browser.raw<StoredSlot[]>('readonly', 'slots', (store) => store.getAll())) {
      if (slot.journal === undefined) continue;
      const torn = { ...slot, journal: { ...slot.journal, text: slot.journal.text.slice(0, -3) } };
      await browser.raw('readwrite', 'slots', (store) => store.put(torn));
    }
    const session = await open(id);
    expect(session.plan.title).toBe('Ketch');
    expect(session.undoes).toBeUndefined();
  });

  it('ends where a kept step cannot be read any more', async () => {
    const { plan } = new Session(newPlan('Sloop'));
    const line = { label: 'Something', at: 0, drop: 5, put: 'torn' };
    const journal = readJournal(
      JSON.stringify({ version: 2, done: [line], undone: [] }),
      writePlan(plan),
      plan,
    );
    if (journal === undefined) throw new Error('The journal was not read.');
    const session = new Session(plan);
    session.recall(journal);
    session.undo();
    expect(session.plan).toBe(plan);
    expect(session.undoes).toBeUndefined();
  });

  it('stores no more steps than it may, and each of them small', () => {
    const session = new Session(newPlan('Sloop'));
    for (let i = 0; i < MOST_STEPS + 20; i++) session.choose('shim_count', i % 2);
    const text = writeJournal(session.journal);
    expect((JSON.parse(text) as { done: unknown[] }).done).toHaveLength(MOST_STEPS);
    expect(text.length).toBeLessThan(MOST_STEPS * 300);
  });
});
