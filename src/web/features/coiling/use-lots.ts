import type { UseQueryResult } from '@tanstack/react-query';
import { useMemo } from 'react';
import { type RecordOf, useAllRecords, useReading, useRecord } from '../../api/use-records.js';
import { useWholeReading } from '../../api/use-whole-reading.js';
import { isOf, takenBackIn, useComing } from '../../outbox/index.js';
import { eachOnce, type Tally } from '../../parts/tallies.js';
import { type LotCount, type LyingIn, lotAsComing, lotCount, lyingIn } from './lot-count.js';

type Lot = RecordOf<'string-lot'>;

/** Lots that wait for the coiler, the oldest first, as they will be with what waits on this screen. */
export function useLots(): {
  readonly question: UseQueryResult<readonly Lot[]>;
  readonly lots: readonly Lot[];
} {
  const inCheck = useAllRecords('string-lot', { state: 'in-check', order: 'oldest' });
  const onHold = useAllRecords('string-lot', { state: 'on-hold', order: 'oldest' });
  const coming = useComing();
  const lots = useMemo(
    () => [...(inCheck.data ?? []), ...(onHold.data ?? [])].map((lot) => lotAsComing(lot, coming)),
    [inCheck.data, onHold.data, coming],
  );
  return { question: inCheck, lots };
}

/** A lot as it was last heard of: by itself, or in the lists. */
export function useLotHeardOf(lotId: string): {
  readonly question: UseQueryResult<Lot>;
  readonly lot: Lot | undefined;
} {
  const question = useRecord('string-lot', lotId);
  const listed = useLots().lots.filter(({ id }) => id === lotId);
  const coming = useComing();
  const heard = question.data ? [lotAsComing(question.data, coming), ...listed] : listed;
  return { question, lot: heard.toSorted((one, other) => other.version - one.version)[0] };
}

export type LotTally = Tally & { readonly at: string; readonly by: string };

/** What is known of a lot at the coiling table. */
export interface LotBook {
  readonly lot: Lot;
  /** Counted at coiling, the oldest first. */
  readonly tallies: readonly LotTally[];
  readonly count: LotCount;
  readonly lying: readonly LyingIn[];
  readonly isOnTheWay: boolean;
}

export function useLotBook(lot: Lot): LotBook {
  const tallies = useWholeReading('tallies', { lotId: lot.id }).data;
  const balances = useReading('balances', { accountPrefix: 'bin/', lot: lot.id }).data?.items;
  const all = useComing();
  return useMemo(() => {
    const coming = all.filter(({ about }) => about.includes(lot.id));
    const isGone = takenBackIn(coming);
    const talliesNow = eachOnce<LotTally>(
      tallies ?? [],
      coming.flatMap((entry) =>
        isOf(entry, 'record-tally') ? { ...entry.input, at: entry.at, by: `person/${entry.by.id}` } : [],
      ),
    ).filter(({ id }) => !isGone.has(id));
    return {
      lot,
      tallies: talliesNow,
      count: lotCount(talliesNow, lot.body.made),
      lying: lyingIn(balances ?? [], coming, lot.id),
      isOnTheWay: coming.some(({ state }) => state !== 'done'),
    };
  }, [lot, all, tallies, balances]);
}
