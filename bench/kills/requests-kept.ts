import assert from 'node:assert/strict';
import { RECORD_KINDS, type RecordKind } from '../../src/contract/index.js';
import { checkShop, type JournalEntry, type Store } from '../../src/workshop/index.js';
import { requestOfId, WRITES } from './requests.js';

/**
 * The ids of the requests that a shop has kept, after a look at whether it kept each of them whole: the journal tells what
 * was done, and every other table must hold what it tells, and nothing more. Throws where one does not, or where the
 * shop's own check finds a fault.
 */
export async function requestsKept(store: Store): Promise<ReadonlySet<string>> {
  const tables = await everyRow(store);
  const journal = tables('journal').map(entryOf);
  assertSame('events', tables('events').map(eventLine), journal.flatMap(eventLines));
  assertSame('journal_touched', tables('journal_touched').map(touchedLine), journal.flatMap(touchedLines));
  assertSame('movements', tables('movements').map(idOf), touchedIds(journal, 'movement'));
  assertSame('trial strings', tables('trial_strings').map(idOf), touchedIds(journal, 'trial-string'));
  assertSame('records', recordLines(tables), lastTouched(journal));
  const ours = journal.filter(({ id }) => requestOfId(id) !== undefined);
  for (const { useCase, touched } of ours)
    assert.deepEqual(touched.map(({ kind }) => kind).sort(), [...WRITES[useCase]!].sort(), useCase);
  const isOurs = (id: string) => requestOfId(id) !== undefined;
  assertSame('measurements', tables('measurements').map(idOf).filter(isOurs), ours.flatMap(measuredIds));
  assertSame('tallies', tables('tallies').map(idOf).filter(isOurs), ours.flatMap(talliedIds));
  assertSame('repeats', tables('repeats').map(repeatLine), ours.map(requestLine));
  const check = await checkShop(store);
  assert.ok(check.isSound, JSON.stringify(check));
  return new Set(ours.map(({ id }) => requestOfId(id)!));
}

type Row = Readonly<Record<string, string | number | null>>;
type Tables = (table: string) => readonly Row[];

/** All tables as they lie in the database, at one moment. */
async function everyRow(store: Store): Promise<Tables> {
  const rows = new Map<string, readonly Row[]>();
  await store.read(async ({ tables }) => {
    for (const table of tables.names) {
      const found: Row[] = [];
      let after: string | undefined;
      do {
        const page = await tables.rows(table, { limit: 500, ...(after === undefined ? {} : { after }) });
        found.push(...page.items);
        after = page.next;
      } while (after !== undefined);
      rows.set(table, found);
    }
  });
  return (table) => rows.get(table)!;
}

/** As often each, in whatever order. */
function assertSame(what: string, found: readonly string[], told: readonly string[]): void {
  const [one, other] = [[...found].sort(), [...told].sort()];
  const only = (these: readonly string[], those: readonly string[]) => {
    const known = new Set(those);
    return these.filter((line) => !known.has(line));
  };
  const isSame = one.length === other.length && one.every((line, at) => line === other[at]);
  const differ = { found: one.length, told: other.length, more: only(one, other), missing: only(other, one) };
  assert.ok(isSame, `${what} are not what the journal tells: ${JSON.stringify(differ)}`);
}

const idOf = ({ id }: Row): string => String(id);

const entryOf = ({ id, at, by, use_case, input, touched }: Row): JournalEntry => ({
  id: String(id),
  at: String(at),
  by: String(by),
  useCase: String(use_case),
  input: JSON.parse(String(input)),
  touched: JSON.parse(String(touched)),
});

const eventLine = ({ topic, record_id, version, use_case, at }: Row): string =>
  `${topic} ${record_id} ${version} ${use_case} ${at}`;

const eventLines = ({ touched, useCase, at }: JournalEntry): readonly string[] =>
  touched.map(({ kind, id, version }) => `${kind} ${id} ${version} ${useCase} ${at}`);

const touchedLine = ({ journal_id, record_id, at }: Row): string => `${journal_id} ${record_id} ${at}`;

const touchedLines = (entry: JournalEntry): readonly string[] =>
  [...new Set(entry.touched.map(({ id }) => id))].map((id) => `${entry.id} ${id} ${entry.at}`);

/** Each once, since a trial string is touched again when it is judged. */
const touchedIds = (journal: readonly JournalEntry[], kind: string): readonly string[] => [
  ...new Set(
    journal.flatMap(({ touched }) => touched.filter((each) => each.kind === kind).map(({ id }) => id)),
  ),
];

/** The present version of every record; that its former versions are there too, the shop's check has seen. */
const recordLines = (tables: Tables): readonly string[] =>
  KINDS.flatMap((kind) => {
    const table = RECORD_KINDS[kind].collection.replaceAll('-', '_');
    return tables(table).map(({ id, version }) => `${kind} ${id} ${version}`);
  });

function lastTouched(journal: readonly JournalEntry[]): readonly string[] {
  const last = new Map<string, number>();
  for (const { kind, id, version } of journal.flatMap(({ touched }) => touched)) {
    const record = `${kind} ${id}`;
    if (KINDS.includes(kind as RecordKind)) last.set(record, Math.max(version, last.get(record) ?? 0));
  }
  return [...last].map(([record, version]) => `${record} ${version}`);
}

const KINDS = Object.keys(RECORD_KINDS) as readonly RecordKind[];

const measuredIds = ({ useCase, input }: JournalEntry): readonly string[] =>
  useCase === 'record-measurements'
    ? (input as { readonly rows: readonly { readonly id: string }[] }).rows.map(({ id }) => id)
    : [];

const talliedIds = ({ useCase, input }: JournalEntry): readonly string[] =>
  useCase === 'record-tally' ? [(input as { readonly id: string }).id] : [];

const repeatLine = ({ request_id, use_case, at }: Row): string => `${request_id} ${use_case} ${at}`;

const requestLine = ({ id, useCase, at }: JournalEntry): string => `${requestOfId(id)} ${useCase} ${at}`;
