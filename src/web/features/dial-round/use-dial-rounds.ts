import { useMemo } from 'react';
import { type RecordOf, useAllRecords } from '../../api/use-records.js';
import { isOf, type QueuedEntry, useComing } from '../../outbox/index.js';

export type DialRound = RecordOf<'dial-round'>;

/** Rounds of a machine's dial as they will be with what waits on this screen, the newest last. */
export function useDialRounds(machineId: string, quantity: DialRound['body']['quantity']) {
  const question = useAllRecords('dial-round', { machineId });
  const coming = useComing();
  const rounds = useMemo(
    () =>
      roundsAsComing(question.data ?? [], coming).filter(
        ({ body }) => body.machineId === machineId && body.quantity === quantity,
      ),
    [question.data, coming, machineId, quantity],
  );
  return { question, rounds };
}

/** Entries that the record has in it already are left out by their own ids. */
export function roundsAsComing(
  known: readonly DialRound[],
  coming: readonly QueuedEntry[],
): readonly DialRound[] {
  const ids = new Set(known.map(({ id }) => id));
  const begun = coming.flatMap((entry): readonly DialRound[] => {
    if (!isOf(entry, 'begin-dial-round') || ids.has(entry.input.id)) return [];
    const { id, ...asked } = entry.input;
    const stamps = { version: 0, state: 'open', createdAt: entry.at, updatedAt: entry.at };
    return [{ id, ...stamps, body: { ...asked, readings: [] } }];
  });
  return coming.reduce(withEntry, [...known, ...begun]);
}

const withEntry = (rounds: readonly DialRound[], entry: QueuedEntry): readonly DialRound[] =>
  rounds.map((round) => {
    const readings = readingsAfter(round, entry);
    return readings ? { ...round, body: { ...round.body, readings } } : round;
  });

function readingsAfter({ id, body: { readings } }: DialRound, entry: QueuedEntry) {
  if (isOf(entry, 'record-dial-reading') && entry.input.roundId === id) {
    const { roundId: _, ...entered } = entry.input;
    if (readings.some(({ readingId }) => readingId === entered.readingId)) return undefined;
    return [...readings, { ...entered, at: entry.at, by: `person/${entry.by.id}` }];
  }
  if (isOf(entry, 'strike-dial-reading') && entry.input.roundId === id) {
    const { readingId, isStruck } = entry.input;
    return readings.map((each) => (each.readingId === readingId ? { ...each, isStruck } : each));
  }
  return undefined;
}
