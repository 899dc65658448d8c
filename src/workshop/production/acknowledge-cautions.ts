import { acknowledgeCautions as definition } from '../../contract/index.js';
import { fail, succeed } from '../../core/foundation/index.js';
import { needRecord } from '../record-change.js';
import { useCase } from '../use-case.js';

/**
 * Writes down that a person read the cautions of a machine's run. Only a person can say so, no script; and no run is held up for
 * want of it: a tablet without a line must not lock anybody out, and what counts is that the words stand before the hand.
 */
export const acknowledgeCautions = useCase(definition, async ({ tx, actor, now }, input) => {
  const { personId, by } = actor;
  if (personId === undefined || by !== `person/${personId}`) return fail({ code: 'access.session-needed' });
  await needRecord(tx, 'machine', input.machineId);
  await tx.cautionReadings.add({ ...input, personId, at: now });
  return succeed({ id: input.id, at: now });
});
