import type { Session } from '../session/session.ts';
import { giveDesk } from '../session/studies/desk.ts';
import type { FromWorker, Line, ToWorker } from '../session/studies/messages.ts';
import { RemoteDesk } from '../session/studies/remote-desk.ts';

function lineTo(worker: Worker): Line<ToWorker, FromWorker> {
  return {
    send: (message) => {
      worker.postMessage(message);
    },
    hear: (listener) => {
      worker.addEventListener('message', (event: MessageEvent<FromWorker>) => {
        listener(event.data);
      });
    },
  };
}

/**
 * Gives the session's studies a worker with an engine of its own. Where none can start they are worked out in the page,
 * a slice at a time.
 */
export function startStudyWorker(session: Session): void {
  if (typeof Worker === 'undefined') return;
  try {
    const worker = new Worker(new URL('./study-worker.ts', import.meta.url), { type: 'module' });
    const desk = new RemoteDesk(lineTo(worker));
    worker.addEventListener(
      'message',
      () => {
        giveDesk(session, desk);
      },
      { once: true },
    );
    desk.warm(session.plan);
  } catch {
    // The page's own desk answers.
  }
}
