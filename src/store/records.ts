import { type SelectQueryBuilder, sql } from 'kysely';
import type { BodyOf, RecordKind, StoredRecord } from '../contract/index.js';
import { invariant } from '../core/foundation/index.js';
import { askAgain, askInPieces } from './ask-again.js';
import { behind, inOrder, pageOf, rowsToFetch, type Walk } from './cursor.js';
import type { Dialect } from './dialect.js';
import { KnownRecords } from './known-records.js';
import { type bodyCheck, keyValue } from './record-bodies.js';
import { type RecordTable, recordTable } from './record-tables.js';
import { keepRunFacts } from './run-facts.js';
import type { ListQuery, NewRecord, RecordChange, RecordReader, RecordWriter } from './store.js';
import { StaleVersion, Taken } from './store-faults.js';
import type { RecordRow, Sql, Tables } from './tables.js';

type Where = Readonly<Record<string, string | number>>;

/** The records within one transaction. */
export function createRecords(
  trx: Sql,
  dialect: Dialect,
  checkBody: ReturnType<typeof bodyCheck>,
): RecordWriter {
  const known = new KnownRecords();
  const reader = createReader(trx, dialect, known);
  return {
    ...reader,
    insert: async (kind, record) => {
      checkBody(kind, record.body);
      const stored = await insert(trx, recordTable(kind), record);
      known.forget(kind, record.id);
      await keepRunFacts(trx, runsTouched(kind, stored));
      return stored;
    },
    insertAll: async (kind, records) => {
      for (const { id, body } of records) {
        checkBody(kind, body);
        known.forget(kind, id);
      }
      await insertAll(trx, recordTable(kind), records);
    },
    update: async (kind, change) => {
      checkBody(kind, change.body);
      const present = await reader.get(kind, change.id);
      const stored = await update(trx, recordTable(kind), change, present);
      known.forget(kind, change.id);
      if (kind === 'run') await keepRunFacts(trx, runsTouched(kind, stored));
      return stored;
    },
  };
}

/** Runs of which something else is to be told since a record was written. The spools of a lot never change. */
function runsTouched(kind: RecordKind, { id, body }: StoredRecord<object>): readonly string[] {
  if (kind === 'run') return 'startedAt' in body ? [id] : [];
  return kind === 'string-lot' && 'runId' in body ? [String(body.runId)] : [];
}

function createReader(trx: Sql, dialect: Dialect, known: KnownRecords): RecordReader {
  const fetch = async (kind: RecordKind, id: string) => {
    const { rows } = await askAgain(trx, `get ${kind}`, [{ id }], ([mark]) =>
      from(trx, recordTable(kind)).where('id', '=', mark!.id),
    );
    return rows[0] && asRecord(rows[0]);
  };
  return {
    get: async <Kind extends RecordKind>(kind: Kind, id: string) =>
      (await known.get(kind, id, () => fetch(kind, id))) as StoredRecord<BodyOf<Kind>> | undefined,
    find: async (kind, where) => {
      const row = await narrowed(from(trx, recordTable(kind)), recordTable(kind), where)
        .orderBy('created_at')
        .orderBy('id')
        .limit(1)
        .executeTakeFirst();
      return row && asRecord(row);
    },
    list: (kind, query) => list(trx, dialect, recordTable(kind), query),
    all: async (kind, where = {}) => {
      const rows = await narrowed(from(trx, recordTable(kind)), recordTable(kind), where)
        .orderBy('created_at')
        .orderBy('id')
        .execute();
      return rows.map((row) => asRecord(row));
    },
    between: async (kind, key, ends) =>
      (await between(trx, recordTable(kind), key, ends)).map((row) => asRecord(row)),
    versions: async (kind, id) => {
      const former = await trx
        .selectFrom('record_versions')
        .select(['record_id as id', 'version', 'state', 'created_at', 'updated_at', 'body'])
        .where('kind', '=', kind)
        .where('record_id', '=', id)
        .orderBy('version')
        .execute();
      const present = await from(trx, recordTable(kind)).where('id', '=', id).execute();
      return [...former, ...present].map((row) => asRecord(row));
    },
  };
}

async function list<Kind extends RecordKind>(
  trx: Sql,
  dialect: Dialect,
  table: RecordTable,
  { where = {}, search = '', after, limit, order = 'newest' }: ListQuery,
) {
  const walk: Walk = { by: ['created_at', 'id'], order, after, limit };
  const sought = folded(search);
  // Looked for by itself, so that an index answers it and only the records found are read.
  const found = narrowed(trx.selectFrom(any(table)).select('id'), table, where)
    .$if(sought !== '', (query) => query.where(({ ref }) => dialect.contains(ref('search_text'), sought)))
    .where(behind(walk))
    .orderBy(inOrder(walk))
    .limit(rowsToFetch(walk));
  const rows = await from(trx, table).where('id', 'in', found).orderBy(inOrder(walk)).execute();
  return pageOf(rows, walk, (row) => asRecord<BodyOf<Kind>>(row));
}

async function between(
  trx: Sql,
  table: RecordTable,
  key: string,
  { from: least, to: most, last }: Parameters<RecordReader['between']>[2],
) {
  const column = table.keys.find(({ field }) => field === key)?.column;
  invariant(column !== undefined, `${key} is no key of a ${table.kind}`);
  const order = last === undefined ? 'asc' : 'desc';
  const rows = await from(trx, table)
    .$if(least !== undefined, (query) => query.where(sql.ref(column), '>=', least!))
    .$if(most !== undefined, (query) => query.where(sql.ref(column), '<=', most!))
    .orderBy(sql.ref(column), order)
    .orderBy('created_at', order)
    .orderBy('id', order)
    .$if(last !== undefined, (query) => query.limit(last!))
    .execute();
  return last === undefined ? rows : rows.reverse();
}

async function insert<Body>(
  trx: Sql,
  table: RecordTable,
  { id, state = '', body, at }: NewRecord<Body>,
): Promise<StoredRecord<Body>> {
  const row = newRow(table, { id, state, body, at });
  // A fault of the database would end the whole transaction on one engine; this way both just tell.
  const { numAffectedRows } = await askAgain(trx, `insert ${table.kind}`, [row], (marks) =>
    trx
      .insertInto(any(table))
      .values(marks)
      .onConflict((conflict) => conflict.doNothing()),
  );
  if (numAffectedRows !== 1n) {
    const isIdTaken = await from(trx, table).where('id', '=', id).executeTakeFirst();
    if (isIdTaken || !table.own) throw new Taken(table.kind, 'id', id);
    throw new Taken(table.kind, table.own.field, String(keyValue(body, table.own.field)));
  }
  return { id, version: 1, state, createdAt: at, updatedAt: at, body };
}

async function insertAll<Body>(
  trx: Sql,
  table: RecordTable,
  records: readonly NewRecord<Body>[],
): Promise<void> {
  const inserted = await askInPieces(
    trx,
    `insert many ${table.kind}`,
    records.map((record) => newRow(table, record)),
    (marks) =>
      trx
        .insertInto(any(table))
        .values([...marks])
        .onConflict((conflict) => conflict.doNothing()),
  );
  if (inserted !== BigInt(records.length))
    throw new Taken(table.kind, 'id', records.map(({ id }) => id).join(', '));
}

const newRow = <Body>(table: RecordTable, { id, state = '', body, at }: NewRecord<Body>) => ({
  id,
  version: 1,
  state,
  created_at: at,
  updated_at: at,
  ...columnsOf(table, body),
});

async function update<Body>(
  trx: Sql,
  table: RecordTable,
  { id, expectedVersion, state, body, at }: RecordChange<Body>,
  kept: StoredRecord<Body> | undefined,
): Promise<StoredRecord<Body>> {
  if (kept?.version !== expectedVersion) throw new StaleVersion(table.kind, id, expectedVersion, kept);
  await refuseTakenName(trx, table, id, body);
  await keepVersion(trx, table, id);
  const version = expectedVersion + 1;
  const nextState = state ?? kept.state;
  const next = { version, state: nextState, updated_at: at, ...columnsOf(table, body) };
  const { numAffectedRows } = await askAgain(
    trx,
    `update ${table.kind}`,
    [{ ...next, id, expectedVersion }],
    ([mark]) => {
      const { id: ofId, expectedVersion: overVersion, ...columns } = mark!;
      return trx
        .updateTable(any(table))
        .set(columns)
        .where('id', '=', ofId)
        .where('version', '=', overVersion);
    },
  );
  invariant(numAffectedRows === 1n, 'writers queue: nobody can have come between');
  return { id, version, state: nextState, createdAt: kept.createdAt, updatedAt: at, body };
}

async function refuseTakenName(trx: Sql, table: RecordTable, id: string, body: unknown): Promise<void> {
  if (!table.own) return;
  const name = keyValue(body, table.own.field);
  const other = await trx
    .selectFrom(any(table))
    .select('id')
    .where(sql.ref(table.own.column), '=', name)
    .where('id', '<>', id)
    .executeTakeFirst();
  if (other) throw new Taken(table.kind, table.own.field, String(name));
}

const keepVersion = (trx: Sql, table: RecordTable, id: string) =>
  askAgain(trx, `keep version of ${table.kind}`, [{ id }], ([mark]) =>
    trx
      .insertInto('record_versions')
      .columns(['kind', 'record_id', 'version', 'state', 'created_at', 'updated_at', 'body'])
      .expression(({ selectFrom }) =>
        selectFrom(any(table))
          .select(sql.lit(table.kind).as('kind'))
          .select(['id', 'version', 'state', 'created_at', 'updated_at', 'body'])
          .where('id', '=', mark!.id),
      ),
  );

/** All tables of records have these columns; the compiler is told of one of them. */
const any = ({ table }: RecordTable): 'any_records' => table as 'any_records';

const from = (trx: Sql, table: RecordTable) =>
  trx.selectFrom(any(table)).select(['id', 'version', 'state', 'created_at', 'updated_at', 'body']);

function narrowed<Row>(
  rows: SelectQueryBuilder<Tables, 'any_records', Row>,
  { kind, keys }: RecordTable,
  where: Where,
): SelectQueryBuilder<Tables, 'any_records', Row> {
  let narrower = rows;
  for (const [field, value] of Object.entries(where)) {
    const column = field === 'state' ? 'state' : keys.find((key) => key.field === field)?.column;
    invariant(column !== undefined, `${field} is no key of a ${kind}`);
    narrower = narrower.where(sql.ref(column), '=', value);
  }
  return narrower;
}

function columnsOf({ keys }: RecordTable, body: unknown) {
  const values = keys.map(({ field, column }) => [column, keyValue(body, field)] as const);
  const searched = values.flatMap(([, value]) => (typeof value === 'string' ? [value] : []));
  return {
    ...Object.fromEntries(values),
    search_text: folded(searched.join('\n')),
    body: JSON.stringify(body),
  };
}

const folded = (text: string): string => text.normalize('NFC').toLowerCase();

type PlainRow = Omit<RecordRow, 'search_text'>;

const asRecord = <Body>(row: PlainRow): StoredRecord<Body> => ({
  id: row.id,
  version: row.version,
  state: row.state,
  createdAt: row.created_at,
  updatedAt: row.updated_at,
  body: JSON.parse(row.body) as Body,
});
