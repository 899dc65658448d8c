import { receiveRequest as definition } from '../../contract/index.js';
import { succeed } from '../../core/foundation/index.js';
import { REQUEST_LIFE } from '../../core/stock/index.js';
import { useCase } from '../use-case.js';

/** A letter that nobody has answered yet. */
export const receiveRequest = useCase(definition, async ({ tx, now }, { id, ...body }) =>
  succeed(await tx.records.insert('request', { id, state: REQUEST_LIFE.initial, body, at: now })),
);
