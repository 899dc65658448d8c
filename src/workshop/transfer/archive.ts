import { createHash, type Hash } from 'node:crypto';
import { createInterface } from 'node:readline';
import type { Readable, Writable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { createGunzip, createGzip } from 'node:zlib';
import type { ArchiveFault } from '../../contract/index.js';
import { fail, type Result, succeed } from '../../core/foundation/index.js';
import type { ReadTransaction, Store, TableRow, Transaction } from '../../store/index.js';

/**
 * The archive of a whole shop, described in the handbook: gzip over lines of JSON. First a head that names the
 * form and the tables; then a line a row, tables in the order in which they can be filled; last an end with the
 * number of rows and the SHA-256 of every line before it. Both engines write the same lines for the same shop.
 */
export const ARCHIVE_FORM = 'tautwork-shop-archive';
export const ARCHIVE_VERSION = 1;

export interface ArchiveTold {
  readonly rows: number;
}

const PAGE = 500;

/** Writes everything that a shop keeps, one moment of it, and ends the stream. */
export async function exportShop(store: Store, out: Writable): Promise<ArchiveTold> {
  let rows = 0;
  await store.read(async (tx) => {
    const lines = archiveLines(tx, (written) => {
      rows = written;
    });
    await pipeline(lines, createGzip(), out);
  });
  return { rows };
}

async function* archiveLines(tx: ReadTransaction, told: (rows: number) => void): AsyncGenerator<string> {
  const hash = createHash('sha256');
  let rows = 0;
  yield hashed(hash, { form: ARCHIVE_FORM, version: ARCHIVE_VERSION, tables: tx.tables.names });
  for (const table of tx.tables.names) {
    let after: string | undefined;
    do {
      const page = await tx.tables.rows(table, { limit: PAGE, ...(after === undefined ? {} : { after }) });
      for (const row of page.items) {
        rows++;
        yield hashed(hash, { table, row });
      }
      after = page.next;
    } while (after !== undefined);
  }
  told(rows);
  yield `${JSON.stringify({ end: true, rows, sha256: hash.digest('hex') })}\n`;
}

function hashed(hash: Hash, line: object): string {
  const text = `${JSON.stringify(line)}\n`;
  hash.update(text);
  return text;
}

/** Fills an empty shop from an archive: all of it, or nothing where the archive is not whole or not ours. */
export async function importShop(
  store: Store,
  archive: Readable,
): Promise<Result<ArchiveTold, ArchiveFault>> {
  try {
    return succeed(await store.write((tx) => fill(tx, archive)));
  } catch (thrown) {
    if (thrown instanceof Broken) return fail(thrown.fault);
    throw thrown;
  } finally {
    archive.destroy();
  }
}

/** Thrown through the store so that it rolls back. */
class Broken extends Error {
  constructor(readonly fault: ArchiveFault) {
    super(fault.code);
  }
}

async function fill(tx: Transaction, archive: Readable): Promise<ArchiveTold> {
  await refuseUnlessEmpty(tx);
  const known = new Set(tx.tables.names);
  const hash = createHash('sha256');
  const waiting: { table: string; rows: TableRow[] } = { table: '', rows: [] };
  let rows = 0;
  let head = false;
  const flush = async (): Promise<void> => {
    if (waiting.rows.length > 0) await tx.tables.fill(waiting.table, waiting.rows);
    waiting.rows = [];
  };
  for await (const text of linesOf(archive)) {
    const line = parsed(text);
    if (line.end === true) {
      await flush();
      if (line.rows !== rows || line.sha256 !== hash.digest('hex'))
        throw new Broken({ code: 'archive.damaged', rows, expected: Number(line.rows) });
      await tx.tables.filled();
      return { rows };
    }
    hash.update(`${text}\n`);
    if (!head) {
      checkHead(line);
      head = true;
      continue;
    }
    const { table, row } = line as { table: string; row: TableRow };
    if (!known.has(table)) throw new Broken({ code: 'archive.table-unknown', table: String(table) });
    if (table !== waiting.table || waiting.rows.length >= PAGE) {
      await flush();
      waiting.table = table;
    }
    waiting.rows.push(row);
    rows++;
  }
  throw new Broken({ code: 'archive.cut-short', rows });
}

async function refuseUnlessEmpty(tx: Transaction): Promise<void> {
  for (const table of tx.tables.names) {
    const { items } = await tx.tables.rows(table, { limit: 1 });
    if (items.length > 0) throw new Broken({ code: 'archive.shop-not-empty', table });
  }
}

function checkHead({ form, version }: Readonly<Record<string, unknown>>): void {
  if (form !== ARCHIVE_FORM) throw new Broken({ code: 'archive.other-form', form: String(form) });
  if (Number(version) > ARCHIVE_VERSION)
    throw new Broken({ code: 'archive.newer', version: Number(version), known: ARCHIVE_VERSION });
}

async function* linesOf(archive: Readable): AsyncGenerator<string> {
  const unzipped = createGunzip();
  archive.on('error', (fault) => unzipped.destroy(fault));
  try {
    for await (const line of createInterface({
      input: archive.pipe(unzipped),
      crlfDelay: Number.POSITIVE_INFINITY,
    }))
      yield line;
  } catch (thrown) {
    throw new Broken({ code: 'archive.unreadable', because: (thrown as Error).message });
  }
}

function parsed(text: string): Readonly<Record<string, unknown>> {
  try {
    return JSON.parse(text) as Readonly<Record<string, unknown>>;
  } catch (thrown) {
    throw new Broken({ code: 'archive.unreadable', because: (thrown as Error).message });
  }
}
