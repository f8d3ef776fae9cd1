import type { Session } from '../session/session.ts';
import type { Kept } from './kept.ts';
import { startStudyWorker } from './study-line.ts';

/**
 * Brings the page to life after its first paint: the plan kept here, or the first demo boat, and the formula engine.
 * Both load side by side; nothing is stored before what is stored has been read.
 */
export async function boot(session: Session, kept: Kept): Promise<void> {
  const engine = import('../workbook/workbook.ts');
  await kept.start(session);
  const { Workbook } = await engine;
  session.attach(new Workbook(session.plan));
  startStudyWorker(session);
}
