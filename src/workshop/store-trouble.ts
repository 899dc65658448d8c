import { Overdrawn, StaleVersion, StoreUnavailable, Taken, UnreadableCursor } from '../store/index.js';
import { Refusal } from './refusal.js';
import type { WorkshopFault } from './use-case.js';

/** What was thrown, as a fault; undefined for a fault of the program, which must be thrown on. */
export function thrownFault(thrown: unknown): WorkshopFault | undefined {
  if (thrown instanceof Refusal) return thrown.fault;
  if (thrown instanceof StaleVersion) {
    const { kind, id, expectedVersion, current } = thrown;
    return { code: 'stale-version', kind, id, expectedVersion, current };
  }
  if (thrown instanceof Overdrawn) {
    const { account, item, lot, missing } = thrown;
    return { code: 'stock.overdrawn', account, item, lot, missing };
  }
  if (thrown instanceof Taken) {
    const { kind, key, value } = thrown;
    return { code: 'taken', kind, key, value };
  }
  if (thrown instanceof UnreadableCursor) return { code: 'cursor.unreadable', cursor: thrown.cursor };
  if (thrown instanceof StoreUnavailable) return { code: thrown.code, detail: thrown.detail };
  return undefined;
}
