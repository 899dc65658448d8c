import type { SelectQueryBuilder } from 'kysely';
import { invariant } from '../core/foundation/index.js';
import {
  type Account,
  type Balance,
  type Entry,
  type Item,
  mainUnit,
  movementFault,
  mustNotGoBelowZero,
  netEntries,
  type Unit,
} from '../core/stock/index.js';
import { askAgain } from './ask-again.js';
import { ledgerBreaches } from './ledger-check.js';
import type { BalanceRow } from './ledger-tables.js';
import { lyingDuring } from './lying-during.js';
import { movementPage } from './movement-page.js';
import { outflow } from './outflow.js';
import type { LedgerReader, LedgerWriter } from './store.js';
import { Overdrawn } from './store-faults.js';
import type { Sql, Tables } from './tables.js';

/** The stock ledger within one transaction. Movements are only ever added; balances are kept beside them. */
export function createLedger(trx: Sql): LedgerWriter {
  return {
    balance: async (account, item, lot, unit = mainUnit(item)) => {
      const row = await trx
        .selectFrom('balances')
        .select(({ fn }) => fn.sum<number | null>('quantity').as('quantity'))
        .where('account', '=', account)
        .where('item', '=', item)
        .where('unit', '=', unit)
        .$if(lot !== undefined, (query) => query.where('lot', '=', lot!))
        .executeTakeFirst();
      return Number(row?.quantity ?? 0);
    },
    balances: async (query) => {
      const rows = await narrowed(trx.selectFrom('balances'), query)
        .select(['account', 'item', 'lot', 'unit', 'quantity'])
        .orderBy('account')
        .orderBy('item')
        .orderBy('lot')
        .orderBy('unit')
        .execute();
      return rows.map(asBalance);
    },
    movements: (query) => movementPage(trx, query),
    outflow: (query) => outflow(trx, query),
    lyingDuring: (query) => lyingDuring(trx, query),
    breaches: () => ledgerBreaches(trx),
    post: (movement) => post(trx, movement),
  };
}

type NewMovement = Parameters<LedgerWriter['post']>[0];
type BalanceQuery = Parameters<LedgerReader['balances']>[0];

const narrowed = <Row>(
  rows: SelectQueryBuilder<Tables, 'balances', Row>,
  { account, accountPrefix, item, lot }: BalanceQuery,
) =>
  rows
    .$if(account !== undefined, (query) => query.where('account', '=', account!))
    .$if(accountPrefix !== undefined && accountPrefix !== '', (query) =>
      query.where('account', '>=', accountPrefix!).where('account', '<', afterPrefix(accountPrefix!)),
    )
    .$if(item !== undefined, (query) => query.where('item', '=', item!))
    .$if(lot !== undefined, (query) => query.where('lot', '=', lot!));

/** The first text that no longer begins with the prefix. */
const afterPrefix = (prefix: string): string =>
  prefix.slice(0, -1) + String.fromCharCode(prefix.charCodeAt(prefix.length - 1) + 1);

const asBalance = (row: BalanceRow): Balance => ({
  account: row.account as Account,
  item: row.item as Item,
  lot: row.lot,
  unit: row.unit as Unit,
  quantity: Number(row.quantity),
});

async function post(trx: Sql, movement: NewMovement): Promise<void> {
  const fault = movementFault(movement);
  invariant(!fault, `a movement breaks the law ${fault?.code}: ${fault?.about} ${fault?.read}`);
  await write(trx, movement);
  await keepBalances(trx, netEntries(movement.entries));
}

/** Numbers without gaps: writers queue, so the last number is the last one for good. */
async function write(
  trx: Sql,
  { id, at, by, what, reason, ofKind, ofId, entries }: NewMovement,
): Promise<void> {
  const head = { id, at, by, what, reason, of_kind: ofKind, of_id: ofId };
  const { rows } = await askAgain(trx, 'add movement', [head], ([mark]) =>
    trx
      .insertInto('movements')
      .values(({ selectFrom }) => ({
        number: selectFrom('movements').select(({ fn, lit, eb }) =>
          eb(fn.coalesce(fn.max('number'), lit(0)), '+', lit(1)).as('number'),
        ),
        ...mark!,
      }))
      .returning('number'),
  );
  const movement_number = rows[0]!.number;
  await askAgain(
    trx,
    'add movement_entries',
    entries.map(({ account, item, lot, unit, quantity }, index) => ({
      movement_number,
      line: index + 1,
      account,
      item,
      lot,
      unit,
      quantity,
    })),
    (marks) => trx.insertInto('movement_entries').values(marks),
  );
}

/**
 * Adds the changes to the running balances. The sums are made by the database in the one statement that also
 * tells them, so that nobody can have come between; rows are touched in one order, so that two writers wait
 * for each other and do not lock each other out.
 */
async function keepBalances(trx: Sql, changes: readonly Entry[]): Promise<void> {
  if (changes.length === 0) return;
  const { rows: after } = await askAgain(
    trx,
    'keep balances',
    changes.map(({ account, item, lot, unit, quantity }) => ({ account, item, lot, unit, quantity })),
    (marks) =>
      trx
        .insertInto('balances')
        .values(marks)
        .onConflict((conflict) =>
          conflict.columns(['account', 'item', 'lot', 'unit']).doUpdateSet(({ ref, eb }) => ({
            quantity: eb(ref('balances.quantity'), '+', ref('excluded.quantity')),
          })),
        )
        .returning(['account', 'item', 'lot', 'unit', 'quantity']),
  );
  const below = after.map(asBalance).filter((row) => row.quantity < 0 && mustNotGoBelowZero(row.account));
  // Of wire, tell what weight is missing rather than what length.
  const first = below.find(({ item, unit }) => unit === mainUnit(item)) ?? below[0];
  if (first) throw new Overdrawn(first.account, first.item, first.lot, -first.quantity);
  const emptied = after.filter(({ quantity }) => Number(quantity) === 0);
  for (let from = 0; from < emptied.length; from += EMPTIED_AT_ONCE)
    await forgetEmptied(trx, emptied.slice(from, from + EMPTIED_AT_ONCE));
}

/** SQLite bounds how deep a condition may nest, at 1000. */
const EMPTIED_AT_ONCE = 100;

const forgetEmptied = (trx: Sql, emptied: readonly BalanceRow[]) =>
  askAgain(
    trx,
    'forget emptied balances',
    emptied.map(({ account, item, lot, unit }) => ({ account, item, lot, unit })),
    (marks) =>
      trx
        .deleteFrom('balances')
        .where(({ and, or }) => or(marks.map((balance) => and({ ...balance, quantity: 0 })))),
  );
