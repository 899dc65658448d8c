import { sql } from 'kysely';
import type { Item, Unit } from '../core/stock/index.js';
import type { LedgerReader, LyingDuring } from './store.js';
import type { Sql } from './tables.js';

type Query = Parameters<LedgerReader['lyingDuring']>[0];

/**
 * Balances as they are now, less what was moved since the time began, are what lay there then: so only movements since then
 * are walked. They are numbered in the order of their moments. The empty text appended keeps the engine from walking
 * an account's whole history instead.
 */
export async function lyingDuring(
  trx: Sql,
  { accountPrefix, from, to }: Query,
): Promise<readonly LyingDuring[]> {
  const lastBefore = sql`coalesce((select number from movements where at <= ${from} order by number desc limit 1), 0)`;
  const lastOf = sql`coalesce((select number from movements where at <= ${to} order by number desc limit 1), 0)`;
  const { rows } = await sql<{
    account: string;
    item: string;
    lot: string;
    unit: string;
    at_first: number | string;
    came_in: number | string;
  }>`
    select account, item, lot, unit, sum(quantity) as at_first, sum(came_in) as came_in
    from (
      select b.account, b.item, b.lot, b.unit, b.quantity, 0 as came_in
      from balances b
      where substr(b.account, 1, ${accountPrefix.length}) = ${accountPrefix}
      union all
      select e.account, e.item, e.lot, e.unit, -e.quantity as quantity,
        case when e.quantity > 0 and e.movement_number <= ${lastOf} then e.quantity else 0 end as came_in
      from movement_entries e
      where e.movement_number > ${lastBefore}
        and substr(e.account || '', 1, ${accountPrefix.length}) = ${accountPrefix}
    ) moved
    group by account, item, lot, unit
    having sum(quantity) > 0 or sum(came_in) > 0
    order by account, item, lot, unit`.execute(trx);
  return rows.map(({ account, item, lot, unit, at_first, came_in }) => ({
    account: account as LyingDuring['account'],
    item: item as Item,
    lot,
    unit: unit as Unit,
    atFirst: Number(at_first),
    cameIn: Number(came_in),
  }));
}
