import type { Transaction } from 'kysely';
import type { Dialect } from '../dialect.js';

/** A step from one form of the database to the next. Once published it is never changed; a mistake gets a further step. */
export interface Migration {
  readonly number: number;
  readonly name: string;
  /** Runs in a transaction of its own: all of it or nothing. */
  readonly up: (trx: Transaction<unknown>, dialect: Dialect) => Promise<void>;
}
