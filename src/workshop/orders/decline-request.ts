import { declineRequest as definition } from '../../contract/index.js';
import { succeed } from '../../core/foundation/index.js';
import { REQUEST_LIFE } from '../../core/stock/index.js';
import { recordAsSeen, stepRecord } from '../record-change.js';
import { useCase } from '../use-case.js';

export const declineRequest = useCase(definition, async (work, { requestId, expectedVersion }) => {
  const record = await recordAsSeen(work.tx, 'request', { id: requestId, expectedVersion });
  return succeed(await stepRecord(work, 'request', { record, life: REQUEST_LIFE, step: 'decline' }));
});
