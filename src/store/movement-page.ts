import { grouped } from '../core/foundation/index.js';
import type { Account, Item, Unit } from '../core/stock/index.js';
import { behind, inOrder, pageOf, rowsToFetch, type Walk } from './cursor.js';
import type { EntryRow, MovementRow } from './ledger-tables.js';
import type { LedgerReader, Page, StoredMovement } from './store.js';
import type { Sql } from './tables.js';

type MovementQuery = Parameters<LedgerReader['movements']>[0];

/** Movements that touch what is asked for, newest first unless told otherwise, each whole with all its entries. */
export async function movementPage(trx: Sql, query: MovementQuery): Promise<Page<StoredMovement>> {
  const { items: numbers, ...place } = await numberPage(trx, query);
  return { items: await wholeMovements(trx, numbers), ...place };
}

async function numberPage(trx: Sql, query: MovementQuery): Promise<Page<number>> {
  const [driving, ...others] = filtersOf(query);
  const walk: Walk = {
    by: [driving ? 'movement_number' : 'number'],
    order: query.order ?? 'newest',
    after: query.after,
    limit: query.limit,
  };
  if (!driving) {
    const all = trx.selectFrom('movements').select('number').where(behind(walk)).orderBy(inOrder(walk));
    return pageOf(await all.limit(rowsToFetch(walk)).execute(), walk, ({ number }) => Number(number));
  }
  let entries = trx
    .selectFrom('movement_entries')
    .select('movement_number')
    .distinct()
    .where(...driving);
  // The empty text appended keeps the engine from walking a far longer index than the driving one.
  for (const [column, , value] of others)
    entries = entries.where(({ eb, val }) => eb(eb(column, '||', val('')), '=', value));
  const rows = await entries.where(behind(walk)).orderBy(inOrder(walk)).limit(rowsToFetch(walk)).execute();
  return pageOf(rows, walk, ({ movement_number }) => Number(movement_number));
}

type Filter = readonly ['account' | 'item' | 'lot', '=', string];

/** What narrows most comes first: a lot, one certain account, an item, and last the shop's great sources and drains. */
function filtersOf({ account, item, lot }: MovementQuery): readonly Filter[] {
  const isCertain = account?.includes('/');
  const ranked: readonly (readonly [Filter[0], string | undefined])[] = [
    ['lot', lot],
    ['account', isCertain ? account : undefined],
    ['item', item],
    ['account', isCertain ? undefined : account],
  ];
  return ranked.flatMap(([column, value]) => (value === undefined ? [] : [[column, '=', value] as const]));
}

async function wholeMovements(trx: Sql, numbers: readonly number[]): Promise<readonly StoredMovement[]> {
  if (numbers.length === 0) return [];
  const movements = await trx.selectFrom('movements').selectAll().where('number', 'in', numbers).execute();
  const entries = await trx
    .selectFrom('movement_entries')
    .selectAll()
    .where('movement_number', 'in', numbers)
    .orderBy('movement_number')
    .orderBy('line')
    .execute();
  const byNumber = new Map(movements.map((row) => [Number(row.number), row]));
  const entriesOf = grouped(entries, ({ movement_number }) => String(movement_number));
  return numbers.map((number) => asMovement(byNumber.get(number)!, entriesOf.get(String(number)) ?? []));
}

const asMovement = (row: MovementRow, entries: readonly EntryRow[]): StoredMovement => ({
  id: row.id,
  at: row.at,
  by: row.by,
  what: row.what,
  reason: row.reason,
  ofKind: row.of_kind,
  ofId: row.of_id,
  entries: entries.map(({ account, item, lot, unit, quantity }) => ({
    account: account as Account,
    item: item as Item,
    lot,
    unit: unit as Unit,
    quantity: Number(quantity),
  })),
});
