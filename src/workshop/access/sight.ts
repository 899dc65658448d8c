import { saveSight } from '../../contract/index.js';
import { fail, succeed } from '../../core/foundation/index.js';
import { needRecord } from '../record-change.js';
import { useCase } from '../use-case.js';

/** How one sees figures oneself; of a script there is nobody to see them. */
export const saveSightCase = useCase(saveSight, async ({ tx, now, actor }, sight) => {
  if (actor.personId === undefined) return fail({ code: 'access.session-needed' });
  const { id, version, body } = await needRecord(tx, 'person', actor.personId);
  await tx.records.update('person', { id, expectedVersion: version, body: { ...body, sight }, at: now });
  return succeed(sight);
});
