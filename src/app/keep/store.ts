import { type DBSchema, type IDBPDatabase, wrap } from 'idb';
import type { Stored, StoredSlot } from './stored.ts';
import type { World } from './world.ts';

interface Tables extends DBSchema {
  slots: { key: [string, number]; value: StoredSlot };
  snapshots: { key: [string, number]; value: Stored };
  probe: { key: string; value: { readonly id: string; readonly when: number } };
}

export type Database = IDBPDatabase<Tables>;

const NAME = 'sternmount';
const VERSION = 1;

/** Errors after which the handle to the database is of no more use, and a new one may be. */
const DEAD: ReadonlySet<string> = new Set(['InvalidStateError', 'UnknownError', 'AbortError']);

const isDead = (error: unknown): boolean => error instanceof DOMException && DEAD.has(error.name);

function build(database: IDBDatabase): void {
  database.createObjectStore('slots', { keyPath: ['plan', 'slot'] });
  database.createObjectStore('snapshots', { keyPath: ['plan', 'serial'] });
  database.createObjectStore('probe', { keyPath: 'id' });
}

/** The browser's database. Its handle may die at any time, after sleep for one; it is then opened anew, once. */
export class Store {
  readonly #indexedDB: World['indexedDB'];
  #database: Promise<Database> | undefined;

  constructor(indexedDB: World['indexedDB']) {
    this.#indexedDB = indexedDB;
  }

  /** Does some work on the database. The work may be done twice, so it must come to the same when it is. */
  async use<T>(work: (database: Database) => Promise<T>): Promise<T> {
    const database = this.#opened();
    try {
      return await work(await database);
    } catch (error) {
      if (!isDead(error)) throw error;
      this.#forget(database);
      return work(await this.#opened());
    }
  }

  async close(): Promise<void> {
    const database = this.#database;
    this.#database = undefined;
    (await database?.catch(() => undefined))?.close();
  }

  #opened(): Promise<Database> {
    if (this.#database !== undefined) return this.#database;
    const opening = this.#open();
    this.#database = opening;
    // A refusal is told to whoever waits for it; here it only means that the next one starts afresh.
    opening.catch(() => this.#forget(opening));
    return opening;
  }

  async #open(): Promise<Database> {
    const request = this.#indexedDB.open(NAME, VERSION);
    request.addEventListener('upgradeneeded', () => build(request.result));
    const database = (await wrap(request)) as unknown as Database;
    const forget = () => {
      this.#database = undefined;
    };
    database.addEventListener('close', forget);
    // Another window wants to change the database's form or delete it: make way.
    database.addEventListener('versionchange', () => {
      database.close();
      forget();
    });
    return database;
  }

  #forget(database: Promise<Database>): void {
    if (this.#database === database) this.#database = undefined;
  }
}
