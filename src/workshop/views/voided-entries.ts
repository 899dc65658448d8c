import type { ReadingAnswer, ReadingQuery } from '../../contract/index.js';
import { invariant } from '../../core/foundation/index.js';
import type { ReadTransaction, VoidedEntry } from '../../store/index.js';

type Voided = ReadingAnswer<'voided-entries'>['items'][number];

/** What was taken back of a run or a lot, with what it had said. */
export async function voidedEntries(
  tx: ReadTransaction,
  query: ReadingQuery<'voided-entries'>,
): Promise<readonly Voided[]> {
  const voided = await tx.readings.voidedEntries(query);
  const told: Voided[] = [];
  for (const { ofKind, ...entry } of voided)
    told.push({ ...entry, was: await whatItWas(tx, { ofKind, entryId: entry.entryId }) });
  return told;
}

async function whatItWas(
  { readings }: ReadTransaction,
  { ofKind, entryId }: Pick<VoidedEntry, 'ofKind' | 'entryId'>,
): Promise<Voided['was']> {
  if (ofKind === 'tally') {
    const tally = await readings.tally(entryId);
    invariant(tally, `tally ${entryId} stays`);
    const { station, outcome, reason, count, at, by } = tally;
    return { of: ofKind, station, outcome, reason, count, at, by };
  }
  if (ofKind === 'measurement') {
    const reading = await readings.measurement(entryId);
    invariant(reading, `measurement ${entryId} stays`);
    const { quantity, value, trialStringId, at, by } = reading;
    return { of: ofKind, quantity, value, trialStringId, at, by };
  }
  const trial = await readings.trialString(entryId);
  invariant(trial, `trial string ${entryId} stays`);
  const { number, at, by } = trial;
  return { of: ofKind, number, at, by };
}
