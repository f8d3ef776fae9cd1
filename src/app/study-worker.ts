import type { FromWorker, ToWorker } from '../session/studies/messages.ts';
import { work } from '../session/studies/work.ts';

// Between two slices the worker hears what the page has to say, above all that a study is no longer wanted.
const channel = new MessageChannel();
const waiting: (() => void)[] = [];
channel.port1.onmessage = () => waiting.shift()?.();
const soon = (run: () => void): void => {
  waiting.push(run);
  channel.port2.postMessage(undefined);
};

const send = (message: FromWorker): void => {
  self.postMessage(message);
};

// Nothing tells a page that its worker has died. A lock that the worker holds as long as it lives does.
if ('locks' in navigator) {
  const lock = `sternmount studies ${crypto.randomUUID()}`;
  void navigator.locks.request(lock, () => {
    send({ kind: 'holding', lock });
    return new Promise(() => {});
  });
}

work(
  {
    send,
    hear: (listener) => {
      self.addEventListener('message', (event: MessageEvent<ToWorker>) => {
        listener(event.data);
      });
    },
  },
  { now: () => performance.now(), soon, afterPaint: soon },
);
