import { byText, invariant } from '../foundation/index.js';
import type { Balance, Entry, Movement } from './ledger.js';

/**
 * What lies where after these movements: every balance other than 0, sorted by account, item, lot and unit.
 * The order of the movements does not matter to it.
 */
export function replay(movements: Iterable<Movement>): readonly Balance[] {
  const sums = new Map<string, Balance>();
  for (const { entries } of movements) for (const entry of entries) add(sums, entry);
  return [...sums.values()].filter(({ quantity }) => quantity !== 0).sort(byPlace);
}

/** The entries that fall on the same account, item, lot and unit put together; what cancels out is left away. */
export const netEntries = (entries: readonly Entry[]): readonly Entry[] => replay([{ ...UNSAID, entries }]);

const UNSAID = { what: '', reason: '', ofKind: '', ofId: '' };

function add(sums: Map<string, Balance>, { account, item, lot, unit, quantity }: Entry): void {
  const place = JSON.stringify([account, item, lot, unit]);
  const sum = (sums.get(place)?.quantity ?? 0) + quantity;
  invariant(Number.isSafeInteger(sum), `a balance of ${account} is beyond exact whole numbers`);
  sums.set(place, { account, item, lot, unit, quantity: sum });
}

const byPlace = (a: Balance, b: Balance): number =>
  byText(a.account, b.account) || byText(a.item, b.item) || byText(a.lot, b.lot) || byText(a.unit, b.unit);
