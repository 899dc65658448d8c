import { useCallback } from 'react';
import { freshId } from '../api/fresh-id.js';
import { useWords } from '../words/language.js';
import { OUTBOX_WORDS } from '../words/outbox.js';
import type { QueuedEntry } from './entry.js';
import { isOf } from './entry.js';
import { useOutbox, useQueued } from './use-outbox.js';

/** What became of an entry that was taken back: the shop never gets it, or it gets a second entry that voids the first. */
export type TakenBack = 'not-sent' | 'voided';

/** An entry of the floor, as it can be taken back. */
export interface ToTakeBack {
  readonly of: 'tally' | 'measurement' | 'trial-string' | 'verdict';
  /** Its own id; of a verdict, that of its trial string. */
  readonly id: string;
  readonly label: string;
  /** Ids of what it belongs to: its run or lot, its trial string. */
  readonly about: readonly string[];
}

/** Takes entries back, sent or not, with a line or without: what waits here yet is thrown away, what is gone is followed by its voiding. */
export function useTakeBack(): (entry: ToTakeBack) => Promise<TakenBack> {
  const words = useWords(OUTBOX_WORDS);
  const { entries, discard } = useOutbox();
  const tally = useQueued('void-tally').enter;
  const measurement = useQueued('void-measurement').enter;
  const trialString = useQueued('void-trial-string').enter;
  const judge = useQueued('judge-trial-string').enter;
  return useCallback(
    async (entry) => {
      const { of, id, label } = entry;
      if (await discardAll(waitingOf(entries, entry), discard)) return 'not-sent';
      const why = { id: freshId(), reason: words.slip };
      const options = { label: words.voids(label), about: [...new Set([...entry.about, id])] };
      if (of === 'tally') await tally({ ...why, tallyId: id }, options);
      if (of === 'measurement') await measurement({ ...why, measurementId: id }, options);
      if (of === 'trial-string') await trialString({ ...why, trialStringId: id }, options);
      const [runId = ''] = entry.about;
      if (of === 'verdict') await judge({ trialStringId: id, runId, verdict: 'open' }, options);
      return 'voided';
    },
    [entries, discard, words, tally, measurement, trialString, judge],
  );
}

/** What of it waits to be sent, the entry itself first, then what goes with it; empty where it is gone to the shop. */
export function waitingOf(
  entries: readonly QueuedEntry[],
  { of, id }: Pick<ToTakeBack, 'of' | 'id'>,
): readonly QueuedEntry[] {
  const waiting = entries.filter(({ state }) => state === 'waiting');
  if (of === 'verdict') {
    const judged = waiting.findLast(
      (entry) => isOf(entry, 'judge-trial-string') && entry.input.trialStringId === id,
    );
    return judged ? [judged] : [];
  }
  const own = waiting.find((entry) => makes(entry, id));
  // A reading goes in rows: it alone can be thrown away only where it came alone, as it does on the floor.
  if (!own || (of === 'measurement' && isOf(own, 'record-measurements') && own.input.rows.length > 1))
    return [];
  return [own, ...waiting.filter((entry) => entry !== own && entry.about.includes(id))];
}

const makes = (entry: QueuedEntry, id: string): boolean =>
  isOf(entry, 'record-measurements')
    ? entry.input.rows.some((row) => row.id === id)
    : (isOf(entry, 'record-tally') || isOf(entry, 'record-trial-string')) && entry.input.id === id;

/** The entry itself first: once it is gone to the shop, nothing of it is thrown away. */
async function discardAll(
  [own, ...rest]: readonly QueuedEntry[],
  discard: (number: number) => Promise<boolean>,
): Promise<boolean> {
  if (!own || !(await discard(own.number))) return false;
  for (const { number } of rest.toReversed()) await discard(number);
  return true;
}

/** Ids of what is being taken back by entries on their way. */
export const takenBackIn = (coming: readonly QueuedEntry[]): ReadonlySet<string> =>
  new Set(
    coming.flatMap((entry) => {
      if (isOf(entry, 'void-tally')) return entry.input.tallyId;
      if (isOf(entry, 'void-measurement')) return entry.input.measurementId;
      return isOf(entry, 'void-trial-string') ? entry.input.trialStringId : [];
    }),
  );
