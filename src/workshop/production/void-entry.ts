import {
  voidMeasurement as voidMeasurementDefinition,
  voidTally as voidTallyDefinition,
  voidTrialString as voidTrialStringDefinition,
} from '../../contract/index.js';
import { succeed } from '../../core/foundation/index.js';
import { correctMovement } from '../../core/stock/index.js';
import type { ReadTransaction, Tally, VoidedEntry } from '../../store/index.js';
import { needRecord } from '../record-change.js';
import { refuse } from '../refusal.js';
import { post } from '../stock/post.js';
import { useCase, type Work } from '../use-case.js';

/** Takes a count back; strings that were thrown away in the same touch lie in their bin again. */
export const voidTally = useCase(voidTallyDefinition, async (work, { id, tallyId, reason }) => {
  const tally = await work.tx.readings.tally(tallyId);
  if (!tally) return refuse({ code: 'record.missing', kind: 'tally', id: tallyId });
  const { runId, lotId } = tally;
  const voided = await takeBack(work, { id, ofKind: 'tally', entryId: tallyId, runId, lotId, reason });
  if (voided.isNew) await putBack(work, tally, reason);
  return succeed(voided.told);
});

/** Takes a reading back. */
export const voidMeasurement = useCase(
  voidMeasurementDefinition,
  async (work, { id, measurementId, reason }) => {
    const reading = await work.tx.readings.measurement(measurementId);
    if (!reading) return refuse({ code: 'record.missing', kind: 'measurement', id: measurementId });
    const { runId } = reading;
    const entry = { id, ofKind: 'measurement', entryId: measurementId, runId, lotId: null, reason } as const;
    return succeed((await takeBack(work, entry)).told);
  },
);

/** Takes a trial string back; what was measured of it goes with it. */
export const voidTrialString = useCase(
  voidTrialStringDefinition,
  async (work, { id, trialStringId, reason }) => {
    const trial = await work.tx.readings.trialString(trialStringId);
    if (!trial) return refuse({ code: 'record.missing', kind: 'trial-string', id: trialStringId });
    const { runId } = trial;
    const entry = { id, ofKind: 'trial-string', entryId: trialStringId, runId, lotId: null, reason } as const;
    return succeed((await takeBack(work, entry)).told);
  },
);

/** Writes the taking back down. Where two take the same back, the second is told of the first: what it wanted is so. */
async function takeBack(
  { tx, now, actor }: Work,
  entry: Omit<VoidedEntry, 'at' | 'by'>,
): Promise<{ readonly isNew: boolean; readonly told: Pick<VoidedEntry, 'id' | 'at'> }> {
  const before = await tx.readings.voidOf(entry.entryId);
  if (before) return { isNew: false, told: { id: before.id, at: before.at } };
  await refuseSettled(tx, entry);
  await tx.readings.voidEntry({ ...entry, at: now, by: actor.by });
  return { isNew: true, told: { id: entry.id, at: now } };
}

/** What was entered for a run counts until its close, what coiling counted until the lot is judged; by then the books go on from it. */
async function refuseSettled(
  tx: ReadTransaction,
  { runId, lotId }: Pick<VoidedEntry, 'runId' | 'lotId'>,
): Promise<void> {
  if (runId !== null) {
    const { state, body } = await needRecord(tx, 'run', runId);
    if (state === 'closed' || state === 'abandoned')
      refuse({ code: 'entry.run-over', runId, runName: body.name, state });
  }
  if (lotId !== null) {
    const { state, body } = await needRecord(tx, 'string-lot', lotId);
    if (state === 'released' || state === 'scrapped')
      refuse({ code: 'entry.lot-judged', lotId, lotName: body.name, state });
  }
}

/** A page of a lot's movements into scrap of one reason: far more than one lot has. */
const MOST_MOVEMENTS = 500;

async function putBack(
  work: Work,
  { id, lotId, outcome, reason: fault }: Tally,
  reason: string,
): Promise<void> {
  if (lotId === null || outcome !== 'scrap') return;
  const { items } = await work.tx.ledger.movements({
    lot: lotId,
    account: `scrap/${fault}`,
    limit: MOST_MOVEMENTS,
  });
  const thrown = items.find(
    ({ what, ofKind, ofId }) => what === 'scrap' && ofKind === 'tally' && ofId === id,
  );
  if (thrown) await post(work, correctMovement(thrown, reason));
}
