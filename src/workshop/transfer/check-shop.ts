import type { IntegrityFault, LedgerBreach, Store } from '../../store/index.js';

export interface ShopCheck {
  /** What is wrong with the database itself. */
  readonly integrity: readonly IntegrityFault[];
  /** Where the ledger breaks its laws. */
  readonly ledger: readonly LedgerBreach[];
  readonly isSound: boolean;
}

/** Looks the whole shop through: the database's pages and references, and every law of the ledger, from every entry. */
export async function checkShop(store: Store): Promise<ShopCheck> {
  const integrity = await store.integrity();
  const ledger = await store.read((tx) => tx.ledger.breaches());
  return { integrity, ledger, isSound: integrity.length === 0 && ledger.length === 0 };
}
