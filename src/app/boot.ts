import type { Session } from '../session/session.ts';
import type { Kept } from './kept.ts';
import { loadFault } from './load-fault.ts';
import { startStudyWorker } from './study-line.ts';

const loadEngine = () => import('../workbook/workbook.ts');

/** Gives the session an engine; where none can be had, the session says so and can try again. */
async function attachEngine(session: Session): Promise<void> {
  try {
    const { Workbook } = await loadEngine();
    session.attach(new Workbook(session.plan));
  } catch (error) {
    session.fail(`The part that works the plan out ${loadFault(error)}`, () => void attachEngine(session));
    return;
  }
  startStudyWorker(session);
}

/**
 * Brings the page to life after its first paint: the plan kept here, or the first demo boat, and the formula engine.
 * Both load side by side; nothing is stored before what is stored has been read.
 */
export async function boot(session: Session, kept: Kept): Promise<void> {
  // What fails here is asked for again, and then told.
  loadEngine().catch(() => {});
  await kept.start(session);
  await attachEngine(session);
}
