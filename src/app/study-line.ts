import type { Session } from '../session/session.ts';
import { giveDesk } from '../session/studies/desk.ts';
import type { FromWorker, ToWorker, WorkerLine } from '../session/studies/messages.ts';
import { RemoteDesk } from '../session/studies/remote-desk.ts';
import { Subject } from './keep/observable.ts';

/** A worker that can be asked, and tells of its end where it can be told. */
function openLine(): WorkerLine {
  const worker = new Worker(new URL('./study-worker.ts', import.meta.url), { type: 'module' });
  const waiting = new AbortController();
  const hear = (listener: (message: FromWorker) => void): void => {
    worker.addEventListener('message', (event: MessageEvent<FromWorker>) => listener(event.data));
  };
  return {
    hear,
    send: (message: ToWorker) => worker.postMessage(message),
    lost: (listener) => {
      for (const fault of ['error', 'messageerror']) worker.addEventListener(fault, listener);
      hear((message) => {
        if (message.kind !== 'holding') return;
        // Granted when the worker that holds it is no more.
        navigator.locks.request(message.lock, { signal: waiting.signal }, listener).catch(() => {});
      });
    },
    close: () => {
      waiting.abort();
      worker.terminate();
    },
  };
}

/** Whether the studies' worker was lost and started again, and has not answered since. */
export const studiesRestarted = new Subject(false);

/**
 * Gives the session's studies a worker with an engine of its own. Where none can start they are worked out in the page,
 * a slice at a time.
 */
export function startStudyWorker(session: Session): void {
  if (typeof Worker === 'undefined') return;
  try {
    const desk: RemoteDesk = new RemoteDesk(
      () => {
        const line = openLine();
        line.hear(({ kind }) => {
          if (kind === 'ready') giveDesk(session, desk);
        });
        return line;
      },
      (isStartedAgain) => studiesRestarted.set(isStartedAgain),
    );
    desk.warm(session.plan);
  } catch {
    // The page's own desk answers.
  }
}
