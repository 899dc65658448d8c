import { sql } from 'kysely';
import type { Item, Unit } from '../core/stock/index.js';
import type { LedgerReader } from './store.js';
import type { Sql } from './tables.js';

type OutflowQuery = Parameters<LedgerReader['outflow']>[0];
type Outflow = Awaited<ReturnType<LedgerReader['outflow']>>[number];

/**
 * Movements are numbered in the order of their moments, so that the last one before `since` tells where to begin. The
 * empty text appended keeps the engine from walking an account's whole history instead of the latest movements.
 */
export async function outflow(trx: Sql, { accountPrefix, what, since }: OutflowQuery): Promise<Outflow[]> {
  const { rows } = await sql<{ item: string; unit: string; quantity: number | string }>`
    select e.item, e.unit, sum(-e.quantity) as quantity
    from movement_entries e
    where e.movement_number > coalesce(
        (select number from movements where at < ${since} order by number desc limit 1), 0)
      and e.quantity < 0
      and substr(e.account || '', 1, ${accountPrefix.length}) = ${accountPrefix}
      and exists (select 1 from movements m where m.number = e.movement_number and m.what = ${what})
    group by e.item, e.unit
    order by e.item, e.unit`.execute(trx);
  return rows.map(({ item, unit, quantity }) => ({
    item: item as Item,
    unit: unit as Unit,
    quantity: Number(quantity),
  }));
}
