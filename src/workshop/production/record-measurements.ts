import { recordMeasurements as definition } from '../../contract/index.js';
import { fail, succeed } from '../../core/foundation/index.js';
import { needRecord } from '../record-change.js';
import { useCase } from '../use-case.js';

/** Writes readings down, all or none, each of a run and, where it says so, of one of that run's trial strings. */
export const recordMeasurements = useCase(definition, async ({ tx, actor, now }, { rows }) => {
  for (const runId of new Set(rows.map((row) => row.runId))) {
    await needRecord(tx, 'run', runId);
    const named = rows.filter((row) => row.runId === runId && row.trialStringId !== undefined);
    if (named.length === 0) continue;
    const known = new Set((await tx.readings.trialStrings(runId)).map(({ id }) => id));
    const stray = named.find(({ trialStringId }) => !known.has(trialStringId ?? ''));
    if (stray) return fail({ code: 'record.missing', kind: 'trial-string', id: stray.trialStringId });
  }
  await tx.readings.addMeasurements(
    rows.map(({ trialStringId = null, placeM = null, rotationDeg = null, ...row }) => ({
      ...row,
      trialStringId,
      placeM,
      rotationDeg,
      at: now,
      by: actor.by,
    })),
  );
  return succeed({ written: rows.length });
});
