/** A way to tell other windows something; a `BroadcastChannel` is one. */
export interface Channel {
  postMessage(message: unknown): void;
  addEventListener(type: 'message', listener: (event: { readonly data: unknown }) => void): void;
  close(): void;
}

export interface Clock {
  /** Milliseconds since 1970. */
  now(): number;
  /** Runs something after some milliseconds, unless the function it gives back is called first. */
  after(milliseconds: number, run: () => void): () => void;
}

/** What keeping needs of the world outside. What a browser does not have is undefined. */
export interface World {
  readonly indexedDB: Pick<IDBFactory, 'open'>;
  readonly locks: Pick<LockManager, 'request'> | undefined;
  readonly channel: ((name: string) => Channel) | undefined;
  readonly storage: Pick<StorageManager, 'persist'> | undefined;
  readonly clock: Clock;
  /** Calls back whenever the page may be about to go; gives back how to stop that. */
  readonly onHide: (listener: () => void) => () => void;
  /** A name that no other plan has. */
  readonly newId: () => string;
}
