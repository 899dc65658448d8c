import type { Movement } from './ledger.js';

/**
 * Takes a movement back: the same entries the other way round, with a reason; who did it stands beside it as
 * beside every movement. Nothing is overwritten: both stay in the ledger. What should have been is then moved
 * by itself.
 */
export const correctMovement = (movement: Movement & { readonly id: string }, reason: string): Movement => ({
  what: 'correct',
  reason,
  ofKind: 'movement',
  ofId: movement.id,
  entries: movement.entries.map((entry) => ({ ...entry, quantity: -entry.quantity })),
});
