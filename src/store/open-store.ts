import { asStoreFault } from './database-faults.js';
import type { Engine } from './engine.js';
import { EventFeed } from './event-feed.js';
import { InsideTransaction } from './inside-transaction.js';
import { migrate } from './migrate.js';
import { MIGRATIONS } from './migrations/index.js';
import { postgresqlEngine } from './postgresql-engine.js';
import { sumFaults } from './quality-sums.js';
import { bodyCheck } from './record-bodies.js';
import { sqliteEngine } from './sqlite-engine.js';
import type { ReadTransaction, Store, Transaction } from './store.js';
import { createTransaction } from './transaction.js';
import { versionFaults } from './version-faults.js';

/** Where the shop's records lie: a file (SQLite), or a server by its URL, `postgres://…`. */
export type StorePlace = { readonly file: string } | { readonly url: string };

export interface StoreOptions {
  /** How long a writer waits for another process before it gives up with `store.locked`; 5 s where left out. */
  readonly lockWaitMs?: number;
  /** Told of trouble that has no caller to throw at, such as a listener's fault or a lost connection. */
  readonly onTrouble?: (thrown: unknown) => void;
}

/**
 * Opens the shop's records, and makes or renews their tables first where that is needed.
 *
 * Throws `StoreUnavailable`: `store.newer` where the database was written by a newer program, `store.lost` where the
 * file's folder or the server is not there, `store.damaged` where the file is no database, and the like.
 */
export async function openStore(place: StorePlace, options: StoreOptions = {}): Promise<Store> {
  const { lockWaitMs = 5_000, onTrouble = () => {} } = options;
  const engine = engineOf(place, lockWaitMs, onTrouble);
  try {
    await migrate(engine, MIGRATIONS);
    return await storeOn(engine, onTrouble);
  } catch (thrown) {
    await engine.close().catch(onTrouble);
    throw asStoreFault(thrown);
  }
}

function engineOf(place: StorePlace, lockWaitMs: number, onTrouble: (thrown: unknown) => void): Engine {
  if ('file' in place) return sqliteEngine({ file: place.file, lockWaitMs });
  return postgresqlEngine({ url: place.url, lockWaitMs, onTrouble });
}

async function storeOn(engine: Engine, onTrouble: (thrown: unknown) => void): Promise<Store> {
  const checkBody = bodyCheck();
  const inside = new InsideTransaction();
  const read = <T>(work: (tx: ReadTransaction) => Promise<T>): Promise<T> =>
    withFaults(() =>
      inside.run(() =>
        engine.read((trx) => inside.mark(() => work(createTransaction(trx, engine.dialect, checkBody)))),
      ),
    );
  const feed = new EventFeed(
    {
      since: (number, limit) => read((tx) => tx.events.since(number, limit)),
      last: () => read((tx) => tx.events.last()),
      onTrouble,
    },
    await read((tx) => tx.events.last()),
  );
  const watch = engine.watch(() => feed.poke());
  const write = async <T>(work: (tx: Transaction) => Promise<T>): Promise<T> => {
    let isTelling = false;
    const done = await withFaults(() =>
      inside.run(() =>
        engine.write(async (trx) => {
          isTelling = false;
          const tx = createTransaction(trx, engine.dialect, checkBody);
          const append: Transaction['events']['append'] = async (events) => {
            await tx.events.append(events);
            if (events.length > 0 && !isTelling) await engine.announce(trx);
            isTelling ||= events.length > 0;
          };
          return inside.mark(() => work({ ...tx, events: { ...tx.events, append } }));
        }),
      ),
    );
    if (isTelling) feed.poke();
    return done;
  };
  let closing: Promise<void> | undefined;
  return {
    engine: engine.dialect.engine,
    read,
    write,
    onEvents: (listener) => feed.listen(listener),
    backupTo: (file) => withFaults(() => engine.backupTo(file)),
    integrity: () =>
      withFaults(async () => {
        const faults = await engine.integrity();
        // Of a damaged file nothing further can be asked.
        if (faults.length > 0) return faults;
        return engine.read(async (trx) => [...(await versionFaults(trx)), ...(await sumFaults(trx))]);
      }),
    close: () => {
      closing ??= (async () => {
        await watch.stop();
        await feed.settled();
        await engine.close();
        inside.end();
      })();
      return closing;
    },
  };
}

async function withFaults<T>(work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (thrown) {
    throw asStoreFault(thrown);
  }
}
