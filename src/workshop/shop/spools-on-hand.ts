import { kgFromMg, type Spool } from '../../core/stock/index.js';
import type { ReadTransaction } from '../../store/index.js';
import type { NameIndex } from './shop-parts.js';

/** Spools with wire on them, on the shelf or on a machine, by what the ledger says they weigh. */
export async function spoolsOnHand(tx: ReadTransaction, wire: NameIndex<'wire'>): Promise<readonly Spool[]> {
  const balances = await tx.ledger.balances({ accountPrefix: 'spool/' });
  const spools: Spool[] = [];
  for (const { account, unit, quantity } of balances) {
    if (unit !== 'mg') continue;
    const spool = await tx.records.get('spool', account.slice('spool/'.length));
    const wireId = spool && wire.nameOf(spool.body.wireId);
    if (!spool || wireId === undefined || spool.state === 'quarantined') continue;
    spools.push({ id: spool.body.name, wireId, lot: spool.body.lot, netKg: kgFromMg(quantity) });
  }
  return spools;
}
