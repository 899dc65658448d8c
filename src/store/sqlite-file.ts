import { accessSync, constants, existsSync } from 'node:fs';
import { dirname } from 'node:path';
import Database from 'better-sqlite3';
import { StoreUnavailable } from './store-faults.js';

/** Short, since the whole process stands still for so long; writers ask again. */
const BUSY_TIMEOUT_MS = 100;
const MOST_LOG_BYTES = 64 * 1024 * 1024;

/** A connection to the shop's file; makes the file where there is none, but not its folder. */
export function openFile(file: string, use: 'read' | 'write'): Database.Database {
  if (!existsSync(dirname(file)))
    throw new StoreUnavailable('store.lost', `the folder of ${file} does not exist`);
  try {
    return opened(file, use);
  } catch (thrown) {
    // SQLite only says that it cannot open the file; it needs two more beside it, for its log.
    if (isUnopened(thrown) && !canWriteIn(dirname(file)))
      throw new StoreUnavailable('store.read-only', `nothing can be written beside ${file}`, {
        cause: thrown,
      });
    throw thrown;
  }
}

function opened(file: string, use: 'read' | 'write'): Database.Database {
  const database = new Database(file, { timeout: BUSY_TIMEOUT_MS });
  try {
    database.pragma('journal_mode = WAL');
    database.pragma('synchronous = FULL');
    database.pragma('foreign_keys = ON');
    // One great import must not leave its log lying at full length for ever.
    database.pragma(`journal_size_limit = ${MOST_LOG_BYTES}`);
    if (use === 'read') database.pragma('query_only = ON');
    return database;
  } catch (thrown) {
    database.close();
    throw thrown;
  }
}

const isUnopened = (thrown: unknown): boolean =>
  thrown instanceof Database.SqliteError && thrown.code.startsWith('SQLITE_CANTOPEN');

function canWriteIn(folder: string): boolean {
  try {
    accessSync(folder, constants.W_OK);
    return true;
  } catch {
    return false;
  }
}
