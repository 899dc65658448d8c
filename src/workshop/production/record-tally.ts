import { recordTally as definition } from '../../contract/index.js';
import { fail, succeed } from '../../core/foundation/index.js';
import { needRecord } from '../record-change.js';
import { useCase } from '../use-case.js';

/** Writes down a count at a station. It moves no stock: closing the run and scrapping from the bin do. */
export const recordTally = useCase(definition, async ({ tx, actor, now }, input) => {
  const { runId = null, lotId = null, outcome, reason } = input;
  if (runId === null && lotId === null) return fail({ code: 'tally.of-nothing' });
  if (outcome === 'scrap' && reason.trim() === '') return fail({ code: 'tally.without-reason' });
  if (runId !== null) await needRecord(tx, 'run', runId);
  if (lotId !== null) await needRecord(tx, 'string-lot', lotId);
  await tx.readings.addTally({ ...input, runId, lotId, at: now, by: actor.by });
  return succeed({ id: input.id, at: now });
});
