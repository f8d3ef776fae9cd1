import type { World } from './world.ts';

/** The parts of a window that keeping uses. */
type Page = Pick<
  Window & typeof globalThis,
  | 'indexedDB'
  | 'navigator'
  | 'document'
  | 'crypto'
  | 'setTimeout'
  | 'clearTimeout'
  | 'addEventListener'
  | 'removeEventListener'
> &
  Partial<Pick<typeof globalThis, 'BroadcastChannel'>>;

/** Where the browser refuses to hand its store over, each use of it is refused instead. */
const storeOf = (page: Page): World['indexedDB'] => {
  try {
    if (page.indexedDB) return page.indexedDB;
  } catch {
    // The browser's settings forbid even to ask.
  }
  return {
    open: () => {
      throw new DOMException('This browser hands out no store.', 'SecurityError');
    },
  };
};

/** The world as a browser's window has it. Old browsers, and pages opened from a file, lack some of it. */
export function browserWorld(page: Page): World {
  const { locks, storage } = page.navigator as Partial<Navigator>;
  const { BroadcastChannel } = page;
  return {
    indexedDB: storeOf(page),
    locks,
    storage: typeof storage?.persist === 'function' ? storage : undefined,
    channel: BroadcastChannel === undefined ? undefined : (name) => new BroadcastChannel(name),
    clock: {
      now: () => Date.now(),
      after: (milliseconds, run) => {
        const timer = page.setTimeout(run, milliseconds);
        return () => page.clearTimeout(timer);
      },
    },
    onHide: (listener) => {
      // A phone may close a hidden page without another word, so hiding counts as going.
      const hidden = () => {
        if (page.document.visibilityState === 'hidden') listener();
      };
      page.addEventListener('pagehide', listener);
      page.document.addEventListener('visibilitychange', hidden);
      return () => {
        page.removeEventListener('pagehide', listener);
        page.document.removeEventListener('visibilitychange', hidden);
      };
    },
    newId: () =>
      // Missing where the page did not come over a secure connection.
      page.crypto.randomUUID?.() ??
      [...page.crypto.getRandomValues(new Uint8Array(16))]
        .map((it) => it.toString(16).padStart(2, '0'))
        .join(''),
  };
}
