import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import type { Channel, Clock, World } from '../../../src/app/keep/world.ts';

/** A clock that stands still until it is moved. */
export class FakeClock implements Clock {
  #now = 1_000_000;
  #waiting: { at: number; run: () => void }[] = [];

  now(): number {
    return this.#now;
  }

  after(milliseconds: number, run: () => void): () => void {
    const one = { at: this.#now + milliseconds, run };
    this.#waiting.push(one);
    return () => {
      this.#waiting = this.#waiting.filter((it) => it !== one);
    };
  }

  move(milliseconds: number): void {
    this.#now += milliseconds;
    const due = this.#waiting.filter((it) => it.at <= this.#now);
    this.#waiting = this.#waiting.filter((it) => it.at > this.#now);
    for (const { run } of due) run();
  }
}

interface Waiting {
  readonly held: () => Promise<void>;
  readonly settle: (granted: Promise<void>) => void;
}

/** As much of the Web Locks API as keeping uses: exclusive locks, waiting with a signal, stealing. */
export class FakeLocks {
  readonly #holders = new Map<string, { steal: () => void }>();
  readonly #queues = new Map<string, Waiting[]>();

  request(
    name: string,
    options: { steal?: boolean; signal?: AbortSignal },
    held: () => Promise<void>,
  ): Promise<void> {
    return new Promise((resolve, reject) => {
      const waiting: Waiting = { held, settle: (granted) => void granted.then(resolve, reject) };
      const queue = this.#queues.get(name) ?? [];
      this.#queues.set(name, queue);
      if (options.steal === true) {
        this.#holders.get(name)?.steal();
        this.#grant(name, waiting);
        return;
      }
      queue.push(waiting);
      options.signal?.addEventListener('abort', () => {
        if (!queue.includes(waiting)) return;
        queue.splice(queue.indexOf(waiting), 1);
        reject(new DOMException('', 'AbortError'));
      });
      this.#next(name);
    });
  }

  #next(name: string): void {
    if (this.#holders.has(name)) return;
    const next = this.#queues.get(name)?.shift();
    if (next !== undefined) this.#grant(name, next);
  }

  #grant(name: string, { held, settle }: Waiting): void {
    let steal: () => void = () => undefined;
    const stolen = new Promise<void>((_, reject) => {
      steal = () => reject(new DOMException('', 'AbortError'));
    });
    const holder = { steal };
    this.#holders.set(name, holder);
    const done = held().finally(() => {
      if (this.#holders.get(name) !== holder) return;
      this.#holders.delete(name);
      this.#next(name);
    });
    settle(Promise.race([done, stolen]));
  }
}

/** Channels between the windows of one browser. */
export class FakeChannels {
  readonly #all = new Set<{ name: string; listeners: ((event: { data: unknown }) => void)[] }>();

  open(name: string): Channel {
    const mine = { name, listeners: [] as ((event: { data: unknown }) => void)[] };
    this.#all.add(mine);
    return {
      postMessage: (message) => {
        for (const other of this.#all) {
          if (other === mine || other.name !== name) continue;
          for (const listener of other.listeners) listener({ data: structuredClone(message) });
        }
      },
      addEventListener: (_type, listener) => mine.listeners.push(listener),
      close: () => this.#all.delete(mine),
    };
  }
}

/** One browser: a store, locks and channels that its windows share. */
export class FakeBrowser {
  readonly factory = new IDBFactory();
  readonly clock = new FakeClock();
  readonly locks = new FakeLocks();
  readonly channels = new FakeChannels();
  /** Every handle to the store that was given out. */
  readonly handles: IDBDatabase[] = [];
  opened = 0;
  persistAsked = 0;
  #ids = 0;

  /** A window of this browser; `hide` does what leaving its page does. */
  window(without: Partial<World> = {}): World & { hide: () => void } {
    const hiding = new Set<() => void>();
    return {
      indexedDB: {
        open: (name, version) => {
          this.opened++;
          const request = this.factory.open(name, version);
          request.addEventListener('success', () => this.handles.push(request.result));
          return request;
        },
      },
      locks: this.locks as unknown as LockManager,
      channel: (name) => this.channels.open(name),
      storage: {
        persist: () => {
          this.persistAsked++;
          return Promise.resolve(true);
        },
      },
      clock: this.clock,
      onHide: (listener) => {
        hiding.add(listener);
        return () => hiding.delete(listener);
      },
      newId: () => `plan-${++this.#ids}`,
      ...without,
      hide: () => {
        for (const listener of hiding) listener();
      },
    };
  }

  /** The store as it lies there, past everything that is tested. */
  async raw<T>(
    mode: IDBTransactionMode,
    table: string,
    work: (store: IDBObjectStore) => IDBRequest<T>,
  ): Promise<T> {
    const open = this.factory.open('sternmount');
    const database = await new Promise<IDBDatabase>((resolve, reject) => {
      open.onsuccess = () => resolve(open.result);
      open.onerror = () => reject(open.error);
    });
    const transaction = database.transaction(table, mode);
    const request = work(transaction.objectStore(table));
    await new Promise<void>((resolve, reject) => {
      transaction.oncomplete = () => resolve();
      transaction.onabort = () => reject(transaction.error);
    });
    database.close();
    return request.result;
  }
}
