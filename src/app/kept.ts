import type { Plan } from '../plan/plan.ts';
import type { Session } from '../session/session.ts';
import type { KeepState, Keeper } from './keep/keeper.ts';
import type { Shelf } from './keep/shelf.ts';
import { type Observable, Subject } from './keep/observable.ts';

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
    const [{ Shelf }, { browserWorld }, { openPlan }] = await Promise.all([
      import('./keep/shelf.ts'),
      import('./keep/browser-world.ts'),
      import('../plan/file/open-plan.ts'),
    ]);
    const shelf = new Shelf(browserWorld(window));
    this.#shelf = shelf;
    const able = await shelf.probe();
    const listed = able.ok ? await shelf.list() : able;
    const last = listed.ok && 'plans' in listed ? listed.plans[0] : undefined;
    const opening = last === undefined ? undefined : await shelf.open(last.id);
    if (opening?.ok) {
      session.load(opening.plan);
      this.#hold(opening.keeper, session);
      return;
    }
    const { default: text } = await import('../../demo-data/start.plan.json?raw');
    const demo = openPlan(text);
    if (demo.ok) session.load(demo.plan);
    if (opening !== undefined) {
      this.#state.set({ state: 'not kept', why: `The plan kept here could not be opened: ${opening.why}` });
      return;
    }
    if (!listed.ok) {
      this.#state.set({ state: 'not kept', why: listed.why });
      return;
    }
    this.#hold(await shelf.create(session.plan), session);
  }

  #hold(keeper: Keeper, session: Session): void {
    this.#keeper = keeper;
    const tell = (): void => this.#state.set(keeper.state.value);
    keeper.state.subscribe(tell);
    tell();
    let known: Plan = session.plan;
    session.subscribe(() => {
      if (session.plan === known) return;
      known = session.plan;
      keeper.keep(known);
    });
  }
}
