import { setTimeout as pause } from 'node:timers/promises';
import { Kysely, sql } from 'kysely';
import { asStoreFault } from './database-faults.js';
import { POSTGRESQL } from './dialect.js';
import type { Engine } from './engine.js';
import { poolTo, postgresqlDialect } from './postgresql-driver.js';
import { CHANNEL_SQL, watchServer } from './postgresql-watch.js';
import type { IntegrityFault } from './store.js';
import { StoreUnavailable } from './store-faults.js';
import type { Sql, Tables } from './tables.js';
import { Turnstile } from './turnstile.js';

export interface PostgresqlPlace {
  readonly url: string;
  readonly lockWaitMs: number;
  readonly onTrouble: (thrown: unknown) => void;
}

const READERS = 8;

/**
 * A PostgreSQL server: readers see one moment, writers follow each other across all processes. They wait in line here
 * before they take a connection, and writers have one of their own: a crowd of writers waiting for one another must
 * not leave readers without any, nor be mistaken for a server that does not answer.
 */
export function postgresqlEngine({ url, lockWaitMs, onTrouble }: PostgresqlPlace): Engine {
  const database = (connections: number) =>
    new Kysely<Tables>({ dialect: postgresqlDialect(poolTo(url, connections, onTrouble), lockWaitMs) });
  const [writer, readers] = [database(1), database(READERS)];
  const [writersLine, readersLine] = [new Turnstile(1), new Turnstile(READERS)];
  const reading = readers.transaction().setIsolationLevel('repeatable read').setAccessMode('read only');
  const read = <T>(work: (trx: Sql) => Promise<T>): Promise<T> =>
    readersLine.pass(() =>
      withPatience(lockWaitMs, (begun) => reading.execute((trx) => begun(() => work(trx)))),
    );
  return {
    dialect: POSTGRESQL,
    read,
    write: (work) =>
      writersLine.pass(() =>
        withPatience(lockWaitMs, (begun) => writer.transaction().execute((trx) => begun(() => work(trx)))),
      ),
    watch: (notice) => watchServer(url, notice, onTrouble),
    announce: async (trx) => {
      await sql`select pg_notify(${sql.raw(CHANNEL_SQL)}, '')`.execute(trx);
    },
    backupTo: async () => {
      throw new Error('a PostgreSQL database is backed up by pg_dump or by its own server');
    },
    integrity: () => read(faultsOf),
    close: async () => {
      await readers.destroy();
      await writer.destroy();
    },
  };
}

type Begun = <T>(work: () => Promise<T>) => Promise<T>;

/**
 * A server that is just restarting is asked again for a while, but only as long as the work has not begun: once it
 * has, nobody knows how far it came, and the caller must decide.
 */
async function withPatience<T>(waitMs: number, attempt: (begun: Begun) => Promise<T>): Promise<T> {
  const until = performance.now() + waitMs;
  for (;;) {
    let hasBegun = false;
    try {
      return await attempt((work) => {
        hasBegun = true;
        return work();
      });
    } catch (thrown) {
      const fault = asStoreFault(thrown);
      const isLost = fault instanceof StoreUnavailable && fault.code === 'store.lost';
      if (!isLost || hasBegun || performance.now() > until) throw thrown;
      await pause(100);
    }
  }
}

/** The server checks pages itself as it reads them (where it was set up with checksums); constraints and indexes can be asked. */
async function faultsOf(trx: Sql): Promise<readonly IntegrityFault[]> {
  const indexes = await sql<{ name: string }>`
    select indexrelid::regclass::text as name from pg_index
    where indrelid in (select oid from pg_class where relnamespace = current_schema()::regnamespace)
      and not (indisvalid and indisready)`.execute(trx);
  const references = await sql<{ name: string; table: string }>`
    select conname as name, conrelid::regclass::text as table from pg_constraint
    where connamespace = current_schema()::regnamespace and not convalidated`.execute(trx);
  return [
    ...indexes.rows.map(({ name }) => ({ check: 'indexes', detail: `the index ${name} is not usable` })),
    ...references.rows.map(({ name, table }) => ({
      check: 'references',
      detail: `${name} of ${table} is not kept`,
    })),
  ];
}
