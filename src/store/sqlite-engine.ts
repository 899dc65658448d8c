import { existsSync } from 'node:fs';
import Database from 'better-sqlite3';
import { Kysely, sql } from 'kysely';
import { SQLITE } from './dialect.js';
import type { Engine, Watch } from './engine.js';
import { sqliteDialect } from './sqlite-driver.js';
import type { IntegrityFault } from './store.js';
import type { Tables } from './tables.js';

const READERS = 4;
/** How often another process's writing is looked for; a change must be on every screen within a second. */
const WATCH_MS = 250;

/** A SQLite file: one connection that writes, a few that read what was committed when they began. */
export function sqliteEngine({ file, lockWaitMs }: { file: string; lockWaitMs: number }): Engine {
  const writer = new Kysely<Tables>({ dialect: sqliteDialect({ file, most: 1, use: 'write', lockWaitMs }) });
  const readers = new Kysely<Tables>({
    dialect: sqliteDialect({ file, most: READERS, use: 'read', lockWaitMs }),
  });
  return {
    dialect: SQLITE,
    read: (work) => readers.transaction().execute(work),
    write: (work) => writer.transaction().execute(work),
    watch: (notice) => watchFile(file, notice),
    announce: async () => {},
    backupTo: (copy) => backUp(file, copy),
    integrity: () => readers.transaction().execute(faultsOf),
    close: async () => {
      await readers.destroy();
      await writer.destroy();
    },
  };
}

/** SQLite tells nobody that it was written to, but counts it: `data_version` changes when another connection commits. */
function watchFile(file: string, notice: () => void): Watch {
  const database = new Database(file, { fileMustExist: true });
  const version = database.prepare('pragma data_version').pluck();
  let seen = version.get();
  const timer = setInterval(() => {
    try {
      const now = version.get();
      if (now === seen) return;
      seen = now;
      notice();
    } catch {
      // Busy for the moment, or the disk is away: the next look is soon.
    }
  }, WATCH_MS);
  timer.unref();
  return {
    stop: async () => {
      clearInterval(timer);
      database.close();
    },
  };
}

/** Over a connection of its own, page by page between the turns of the event loop, so that nobody waits for it. */
async function backUp(file: string, copy: string): Promise<void> {
  if (existsSync(copy)) throw new Error(`${copy} exists already`);
  const source = new Database(file, { fileMustExist: true, readonly: true });
  try {
    // Held at one moment: else it would begin anew whenever somebody writes, and never end where somebody always does.
    source.exec('begin');
    source.prepare('select count(*) from sqlite_master').get();
    await source.backup(copy);
  } finally {
    source.close();
  }
}

async function faultsOf(
  trx: Parameters<Parameters<Engine['read']>[0]>[0],
): Promise<readonly IntegrityFault[]> {
  const pages = await sql<{ integrity_check: string }>`pragma integrity_check`.execute(trx);
  const references = await sql<{
    table: string;
    rowid: number;
    parent: string;
  }>`pragma foreign_key_check`.execute(trx);
  return [
    ...pages.rows
      .filter((row) => row.integrity_check !== 'ok')
      .map((row) => ({ check: 'pages', detail: row.integrity_check })),
    ...references.rows.map(({ table, rowid, parent }) => ({
      check: 'references',
      detail: `row ${rowid} of ${table} refers to what is not in ${parent}`,
    })),
  ];
}
