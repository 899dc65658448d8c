import { sql } from 'kysely';
import { mustNotGoBelowZero } from '../core/stock/index.js';
import type { LedgerBreach } from './store.js';
import type { Sql } from './tables.js';

/** As many of each kind as are told: one is already too many. */
const MOST_TOLD = 100;

/**
 * Where the stored ledger breaks its laws, worked out anew from every entry: a movement whose entries do not
 * sum to zero, a running balance that is not the sum of its entries, a guarded account that was below zero
 * after any movement. Empty for a true ledger. Reads everything: for a check, not for a page.
 */
export async function ledgerBreaches(trx: Sql): Promise<readonly LedgerBreach[]> {
  const found = [
    await told(trx, 'unbalanced', unbalanced),
    await told(trx, 'other-balance', otherBalance),
    await told(trx, 'below-zero', belowZero),
  ].flat();
  return found.filter(({ law, account }) => law !== 'below-zero' || mustNotGoBelowZero(account));
}

interface Row {
  readonly movement_id: string;
  readonly account: string;
  readonly item: string;
  readonly lot: string;
  readonly unit: string;
  readonly quantity: number;
}

async function told(trx: Sql, law: LedgerBreach['law'], query: typeof unbalanced): Promise<LedgerBreach[]> {
  const { rows } = await query.execute(trx);
  return rows.map(({ movement_id, quantity, ...where }) => ({
    law,
    movementId: movement_id,
    ...where,
    quantity: Number(quantity),
  }));
}

const unbalanced = sql<Row>`
  select m.id as movement_id, '' as account, e.item, e.lot, e.unit, sum(e.quantity) as quantity
  from movement_entries e join movements m on m.number = e.movement_number
  group by e.movement_number, m.id, e.item, e.lot, e.unit
  having sum(e.quantity) <> 0
  order by e.movement_number limit ${sql.lit(MOST_TOLD)}`;

/** By how much the running balance is more than its entries. */
const otherBalance = sql<Row>`
  select '' as movement_id, account, item, lot, unit, sum(quantity) as quantity
  from (
    select account, item, lot, unit, quantity from balances
    union all
    select account, item, lot, unit, -quantity from movement_entries
  ) as both_books
  group by account, item, lot, unit
  having sum(quantity) <> 0
  order by account, item, lot, unit limit ${sql.lit(MOST_TOLD)}`;

/** Summed after each movement as a whole: its entries happen at once. */
const belowZero = sql<Row>`
  select m.id as movement_id, r.account, r.item, r.lot, r.unit, r.quantity
  from (
    select movement_number, account, item, lot, unit, sum(sum(quantity)) over (
      partition by account, item, lot, unit order by movement_number
    ) as quantity
    from movement_entries
    where account like '%/%' and account not like 'scrap/%' and account not like 'count-difference/%'
    group by movement_number, account, item, lot, unit
  ) as r join movements m on m.number = r.movement_number
  where r.quantity < 0
  order by r.movement_number limit ${sql.lit(MOST_TOLD)}`;
