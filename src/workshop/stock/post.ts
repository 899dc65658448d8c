import type { Movement } from '../../core/stock/index.js';
import type { Work } from '../use-case.js';

/** Writes a movement into the ledger; nothing where nothing moved. */
export async function post({ tx, actor, now, newId }: Work, movement: Movement | undefined): Promise<void> {
  if (movement) await tx.ledger.post({ ...movement, id: newId(), at: now, by: actor.by });
}
