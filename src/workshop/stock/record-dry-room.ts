import { recordDryRoom as definition } from '../../contract/index.js';
import { succeed } from '../../core/foundation/index.js';
import { useCase } from '../use-case.js';

/** Writes down the climate of the dry room as read at this moment. */
export const recordDryRoom = useCase(definition, async ({ tx, now }, { id, ...reading }) =>
  succeed(await tx.records.insert('dry-room-reading', { id, body: { at: now, ...reading }, at: now })),
);
