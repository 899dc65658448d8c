import { setTimeout as pause } from 'node:timers/promises';
import Database from 'better-sqlite3';
import {
  type CompiledQuery,
  type DatabaseConnection,
  type Dialect,
  type Driver,
  type QueryResult,
  SqliteAdapter,
  SqliteIntrospector,
  SqliteQueryCompiler,
} from 'kysely';
import { openFile } from './sqlite-file.js';
import { Turns } from './turns.js';

export interface SqliteConnections {
  readonly file: string;
  /** How many at most; whoever finds all in use waits in line. */
  readonly most: number;
  /** Writers take the lock of the file at once: a transaction that reads first and then writes can fail half-way. */
  readonly use: 'read' | 'write';
  /** How long to wait for another process that writes. */
  readonly lockWaitMs: number;
}

/** Kysely's way to a SQLite file over a few connections, statements kept prepared. */
export function sqliteDialect(connections: SqliteConnections): Dialect {
  return {
    createAdapter: () => new TransactionalAdapter(),
    createDriver: () => new SqliteDriver(connections),
    createIntrospector: (db) => new SqliteIntrospector(db),
    createQueryCompiler: () => new SqliteQueryCompiler(),
  };
}

/** SQLite rolls `create table` back like anything else; Kysely's own adapter says it does not. */
class TransactionalAdapter extends SqliteAdapter {
  override get supportsTransactionalDdl(): boolean {
    return true;
  }
}

class SqliteDriver implements Driver {
  readonly #connections: SqliteConnections;
  readonly #open: SqliteConnection[] = [];
  readonly #free: SqliteConnection[] = [];
  readonly #waiting: ((connection: SqliteConnection) => void)[] = [];
  readonly #turns = new Turns();

  constructor(connections: SqliteConnections) {
    this.#connections = connections;
  }

  async init(): Promise<void> {}

  async acquireConnection(): Promise<SqliteConnection> {
    const free = this.#free.pop();
    if (free) return free;
    const { file, use, most } = this.#connections;
    if (this.#open.length >= most) return new Promise((resolve) => this.#waiting.push(resolve));
    const connection = new SqliteConnection(openFile(file, use), this.#turns);
    this.#open.push(connection);
    return connection;
  }

  async releaseConnection(connection: SqliteConnection): Promise<void> {
    const next = this.#waiting.shift();
    if (next) next(connection);
    else this.#free.push(connection);
  }

  async beginTransaction(connection: SqliteConnection): Promise<void> {
    const { use, lockWaitMs } = this.#connections;
    if (use === 'read') return connection.begin('begin');
    const until = performance.now() + lockWaitMs;
    for (;;) {
      try {
        return connection.begin('begin immediate');
      } catch (thrown) {
        // Waiting inside SQLite would hold up the whole process, readers and all.
        if (!isBusy(thrown) || performance.now() > until) throw thrown;
        await pause(5 + Math.random() * 20);
      }
    }
  }

  async commitTransaction(connection: SqliteConnection): Promise<void> {
    connection.commit();
  }

  async rollbackTransaction(connection: SqliteConnection): Promise<void> {
    connection.rollback();
  }

  async destroy(): Promise<void> {
    for (const connection of this.#open) connection.close();
  }
}

/** A transaction in which a statement failed takes no other and is not committed: so PostgreSQL has it too. */
class SqliteConnection implements DatabaseConnection {
  readonly #database: Database.Database;
  readonly #statements = new Map<string, Database.Statement<unknown[], unknown>>();
  readonly #turns: Turns;
  #failure: unknown;

  constructor(database: Database.Database, turns: Turns) {
    this.#database = database;
    this.#turns = turns;
  }

  begin(words: 'begin' | 'begin immediate'): void {
    this.#failure = undefined;
    this.#statement(words).run();
  }

  commit(): void {
    if (this.#failure !== undefined) throw afterFailure(this.#failure);
    this.#statement('commit').run();
  }

  /** SQLite itself has rolled back where the disk was full; to ask it again would hide why. */
  rollback(): void {
    this.#failure = undefined;
    if (this.#database.inTransaction) this.#statement('rollback').run();
  }

  async executeQuery<Row>({ sql, parameters }: CompiledQuery): Promise<QueryResult<Row>> {
    if (this.#failure !== undefined) throw afterFailure(this.#failure);
    try {
      return this.#run<Row>(this.#statement(sql), parameters);
    } catch (thrown) {
      if (this.#database.inTransaction) this.#failure = thrown;
      throw thrown;
    } finally {
      await this.#turns.giveWay();
    }
  }

  #run<Row>(
    statement: Database.Statement<unknown[], unknown>,
    parameters: readonly unknown[],
  ): QueryResult<Row> {
    if (statement.reader) return { rows: statement.all(...parameters) as Row[] };
    return { rows: [], numAffectedRows: BigInt(statement.run(...parameters).changes) };
  }

  // biome-ignore lint/correctness/useYield: nobody streams; pages are read instead.
  async *streamQuery<Row>(): AsyncIterableIterator<QueryResult<Row>> {
    throw new Error('lists are read by pages, not streamed');
  }

  close(): void {
    this.#database.close();
  }

  #statement(sql: string): Database.Statement<unknown[], unknown> {
    const kept = this.#statements.get(sql);
    if (kept) return kept;
    if (this.#statements.size >= MOST_STATEMENTS) this.#statements.clear();
    const prepared = this.#database.prepare<unknown[], unknown>(sql);
    this.#statements.set(sql, prepared);
    return prepared;
  }
}

const MOST_STATEMENTS = 500;

const isBusy = (thrown: unknown): boolean =>
  thrown instanceof Database.SqliteError && thrown.code.startsWith('SQLITE_BUSY');

const afterFailure = (failure: unknown): Error =>
  new Error('a statement of this transaction failed: it can only be rolled back', { cause: failure });
