import {
  CompiledQuery,
  type DatabaseConnection,
  type Dialect,
  PostgresAdapter,
  PostgresDriver,
  PostgresIntrospector,
  PostgresQueryCompiler,
} from 'kysely';
import pg from 'pg';

type Settings = Parameters<PostgresDriver['beginTransaction']>[1];

/** Kysely's way to PostgreSQL, with the queue of writers before each transaction that writes. */
export function postgresqlDialect(pool: pg.Pool, lockWaitMs: number): Dialect {
  return {
    createAdapter: () => new PostgresAdapter(),
    createDriver: () => new QueueingDriver(pool, lockWaitMs),
    createIntrospector: (db) => new PostgresIntrospector(db),
    createQueryCompiler: () => new PostgresQueryCompiler(),
  };
}

/** Connections as the store wants them. */
export function poolTo(url: string, connections: number, onTrouble: (thrown: unknown) => void): pg.Pool {
  const pool = new pg.Pool({
    ...connectionTo(url),
    max: connections,
    connectionTimeoutMillis: CONNECT_WAIT_MS,
    // A server that lost its network in the middle must not hold up all others for ever.
    idle_in_transaction_session_timeout: IDLE_TRANSACTION_MS,
  });
  // A lost connection is told to whoever was asking; told to nobody else, it would end the process.
  pool.on('error', onTrouble);
  pool.on('connect', (client) => client.on('error', onTrouble));
  return pool;
}

/** How every connection reads values: whole numbers and sums as numbers, as SQLite gives them. */
export const connectionTo = (url: string): pg.ClientConfig => ({
  connectionString: url,
  application_name: 'tautwork',
  keepAlive: true,
  types: { getTypeParser: parserOf },
});

const CONNECT_WAIT_MS = 5_000;
const IDLE_TRANSACTION_MS = 60_000;

const { INT8, NUMERIC } = pg.types.builtins;

const parserOf = ((type: number, format?: 'text' | 'binary') =>
  type === INT8 || type === NUMERIC ? Number : pg.types.getTypeParser(type, format as 'text')) as NonNullable<
  pg.ClientConfig['types']
>['getTypeParser'];

class QueueingDriver extends PostgresDriver {
  readonly #lockWaitMs: number;

  constructor(pool: pg.Pool, lockWaitMs: number) {
    super({ pool });
    this.#lockWaitMs = lockWaitMs;
  }

  /**
   * Writers take one lock per schema before they read anything, so that they follow each other as on SQLite. The
   * isolation must be `read committed`: under a stricter one, what the writer sees would be fixed when it began to
   * wait, before those ahead of it had committed.
   */
  override async beginTransaction(connection: DatabaseConnection, settings: Settings): Promise<void> {
    if (settings.accessMode === 'read only') return super.beginTransaction(connection, settings);
    const begin = `start transaction isolation level read committed;
      set local lock_timeout = ${Math.ceil(this.#lockWaitMs)};
      select pg_advisory_xact_lock(${WRITERS_LOCK}, hashtext(current_schema()))`;
    try {
      await connection.executeQuery(CompiledQuery.raw(begin));
    } catch (thrown) {
      // Kysely rolls back only what had begun; this has, and the connection goes back to the pool.
      await this.rollbackTransaction(connection as never).catch(() => {});
      throw thrown;
    }
  }
}

/** Any number will do, if nobody else who locks in this database uses it. */
const WRITERS_LOCK = 7_341_000;
