import type { BodyOf } from '../../contract/index.js';
import {
  recordDialReading as recordDefinition,
  type StoredRecord,
  strikeDialReading as strikeDefinition,
} from '../../contract/index.js';
import { fail, succeed } from '../../core/foundation/index.js';
import { valueRead } from '../../core/winding/index.js';
import { needRecord } from '../record-change.js';
import { refuse } from '../refusal.js';
import { useCase, type Work } from '../use-case.js';

/** Writes a reading down, after those that are there already. */
export const recordDialReading = useCase(recordDefinition, async (work, { roundId, ...entered }) => {
  const round = await openRound(work, roundId);
  const { quantity, readings } = round.body;
  if ('pullN' in entered.read !== (quantity === 'pull'))
    return fail({ code: 'dial-round.other-quantity', quantity });
  if (valueRead(entered.read) === undefined)
    return fail({ code: 'dial-round.nothing-moved', dial: entered.dial });
  if (readings.some(({ readingId }) => readingId === entered.readingId))
    return fail({ code: 'taken', kind: 'dial-reading', key: 'id', value: entered.readingId });
  const reading = { ...entered, at: work.now, by: work.actor.by };
  return succeed(await withReadings(work, round, [...readings, reading]));
});

/** Takes a slip out of the reckoning, or puts it back. */
export const strikeDialReading = useCase(strikeDefinition, async (work, { roundId, readingId, isStruck }) => {
  const round = await openRound(work, roundId);
  const { readings } = round.body;
  if (!readings.some((each) => each.readingId === readingId))
    return fail({ code: 'record.missing', kind: 'dial-reading', id: readingId });
  const judged = readings.map((each) => (each.readingId === readingId ? { ...each, isStruck } : each));
  return succeed(await withReadings(work, round, judged));
});

type Round = StoredRecord<BodyOf<'dial-round'>>;

async function openRound({ tx }: Work, roundId: string): Promise<Round> {
  const round = await needRecord(tx, 'dial-round', roundId);
  if (round.state !== 'open') refuse({ code: 'dial-round.not-open', state: round.state });
  return round;
}

const withReadings = (
  { tx, now }: Work,
  { id, version, state, body }: Round,
  readings: Round['body']['readings'],
): Promise<Round> =>
  tx.records.update('dial-round', {
    id,
    expectedVersion: version,
    state,
    body: { ...body, readings },
    at: now,
  });
