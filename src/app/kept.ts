import type { Plan } from '../plan/plan.ts';
import type { Session } from '../session/session.ts';
import type { Keeper, KeepState } from './keep/keeper.ts';
import { type Observable, Subject } from './keep/observable.ts';
import type { Shelf } from './keep/shelf.ts';
import type * as tailModule from './keep/tail.ts';
import { loadFault } from './load-fault.ts';

/** Loaded with the store, after the page is up. */
type Tails = typeof tailModule;

/** How the open plan is kept, for the title block; always said, always true. */
export class Kept {
  readonly #state = new Subject<KeepState | undefined>(undefined);
  #keeper: Keeper | undefined;
  #shelf: Shelf | undefined;

  get state(): Observable<KeepState | undefined> {
    return this.#state;
  }

  get keeper(): Keeper | undefined {
    return this.#keeper;
  }

  get shelf(): Shelf | undefined {
    return this.#shelf;
  }

  /** Shows the plan last kept in this browser, else the first demo boat, and keeps it from then on. */
  async start(session: Session): Promise<void> {
    try {
      await this.#start(session);
    } catch (error) {
      const why = `The part of the page that keeps plans ${loadFault(error)} Load the page again.`;
      this.#state.set({ state: 'not kept', why });
    }
  }

  async #start(session: Session): Promise<void> {
    const [{ Shelf }, { browserWorld }, tails] = await Promise.all([
      import('./keep/shelf.ts'),
      import('./keep/browser-world.ts'),
      import('./keep/tail.ts'),
    ]);
    const shelf = new Shelf(browserWorld(window));
    this.#shelf = shelf;
    const able = await shelf.probe();
    if (!able.ok) {
      await this.#showDemo(session);
      this.#state.set({ state: 'not kept', why: able.why });
      return;
    }
    const listed = await shelf.list();
    const last = listed.ok ? listed.plans[0] : undefined;
    if (last !== undefined) await this.#showKept(session, shelf, last.id, tails);
    else {
      const tail = tails.readTail(window.localStorage);
      if (tail === undefined) await this.#showDemo(session);
      else session.load(tail.plan);
      this.#hold(await shelf.create(session.plan), session, tails);
    }
  }

  async #showKept(session: Session, shelf: Shelf, id: string, tails: Tails): Promise<void> {
    const tail = tails.readTail(window.localStorage);
    const opening = await shelf.open(id);
    if (!opening.ok) {
      await this.#showDemo(session);
      this.#state.set({ state: 'not kept', why: `The plan kept here could not be opened: ${opening.why}` });
      return;
    }
    session.load(opening.plan);
    if (opening.journal !== undefined) session.recall(opening.journal);
    this.#hold(opening.keeper, session, tails);
    // An edit that came too late for the store is put in as if it were made now.
    if (
      tail !== undefined &&
      tails.isMissing(tail, id, opening) &&
      opening.keeper.state.value.state === 'kept'
    ) {
      session.edit('The last edit', () => ({ ok: true, plan: tail.plan }));
    }
  }

  async #showDemo(session: Session): Promise<void> {
    const [{ openPlan }, { default: text }] = await Promise.all([
      import('../plan/file/open-plan.ts'),
      import('../../demo-data/start.plan.json?raw'),
    ]);
    const demo = openPlan(text);
    if (!demo.ok) throw new Error(`The first demo boat cannot be opened: ${demo.why}`);
    session.load(demo.plan);
  }

  #hold(keeper: Keeper, session: Session, tails: Tails): void {
    this.#keeper = keeper;
    const tell = (): void => this.#state.set(keeper.state.value);
    keeper.state.subscribe(tell);
    tell();
    let known: Plan = session.plan;
    session.subscribe(() => {
      if (session.plan === known) return;
      known = session.plan;
      keeper.keep(known, session.journal);
    });
    this.#guard(keeper, session, tails);
  }

  #guard(keeper: Keeper, session: Session, { dropTail, holdTail }: Tails): void {
    window.addEventListener('pagehide', () => {
      if (keeper.state.value.state === 'keeping') {
        holdTail(window.localStorage, keeper.id, Date.now(), session.plan);
      }
    });
    keeper.state.subscribe(() => {
      if (keeper.state.value.state === 'kept') dropTail(window.localStorage);
    });
  }
}
