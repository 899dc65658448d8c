import type { Dialect } from './dialect.js';
import type { IntegrityFault } from './store.js';
import type { Sql } from './tables.js';

/** A database as the store drives it: what the two engines do each in its own way. */
export interface Engine {
  readonly dialect: Dialect;
  /** One moment throughout; writing is refused. */
  read<T>(work: (trx: Sql) => Promise<T>): Promise<T>;
  /** One at a time among all processes, on the disk when it returns. */
  write<T>(work: (trx: Sql) => Promise<T>): Promise<T>;
  /** Calls whenever somebody, in whichever process, may have written. */
  watch(notice: () => void): Watch;
  /** Within a transaction that writes events: tells the other processes when it is committed. */
  announce(trx: Sql): Promise<void>;
  backupTo(file: string): Promise<void>;
  integrity(): Promise<readonly IntegrityFault[]>;
  close(): Promise<void>;
}

export interface Watch {
  stop(): Promise<void>;
}
