import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { QueuedEntry } from './entry.js';

interface Shelves extends DBSchema {
  entries: { key: number; value: QueuedEntry };
}

/** The queue as it lies in this browser, whichever tabs are open; what was written survives the closing of all of them. */
export interface EntryStore {
  readonly all: () => Promise<readonly QueuedEntry[]>;
  /** Changes the queue by what stands in it, whole or not at all, while no other tab does. */
  readonly change: <Given>(work: (queue: Queue) => Promise<Given>) => Promise<Given>;
  /** Told after a change by this tab or another. Gives what stops it. */
  readonly onChange: (hear: () => void) => () => void;
}

/** The queue, while it is being changed. */
export interface Queue {
  readonly all: () => Promise<readonly QueuedEntry[]>;
  readonly get: (number: number) => Promise<QueuedEntry | undefined>;
  /** Gives its number. */
  readonly add: (entry: Omit<QueuedEntry, 'number'>) => Promise<number>;
  readonly put: (entry: QueuedEntry) => Promise<unknown>;
  readonly drop: (number: number) => Promise<unknown>;
}

const NAME = 'tautwork.outbox';

export function openEntryStore(): EntryStore {
  const opened = open();
  const channel = new BroadcastChannel(NAME);
  const hearers = new Set<() => void>();
  channel.addEventListener('message', () => {
    for (const hear of hearers) hear();
  });
  return {
    all: async () => (await opened).getAll('entries'),
    change: async (work) => {
      // Strict: a tablet that loses its power just after still has the entry.
      const change = (await opened).transaction('entries', 'readwrite', { durability: 'strict' });
      const entries = change.store;
      const given = await work({
        all: () => entries.getAll(),
        get: (number) => entries.get(number),
        add: (entry) => entries.add(entry as QueuedEntry),
        put: (entry) => entries.put(entry),
        drop: (number) => entries.delete(number),
      });
      await change.done;
      channel.postMessage('changed');
      for (const hear of hearers) hear();
      return given;
    },
    onChange: (hear) => {
      hearers.add(hear);
      return () => hearers.delete(hear);
    },
  };
}

const open = (): Promise<IDBPDatabase<Shelves>> =>
  openDB<Shelves>(NAME, 1, {
    upgrade: (database) => {
      database.createObjectStore('entries', { keyPath: 'number', autoIncrement: true });
    },
  });
