import { useMemo } from 'react';
import type { ReadingAnswer } from '../../../contract/index.js';
import { standingChecks } from '../../../core/winding/index.js';
import { useWholeReading } from '../../api/use-whole-reading.js';
import { isOf, type QueuedEntry, useComing } from '../../outbox/index.js';

export type KeptCheck = ReadingAnswer<'end-checks'>['items'][number];

/** An end as it was found, with the shop or still on this screen. */
export type ShownCheck = Pick<
  KeptCheck,
  'id' | 'lengthM' | 'twists' | 'tailM' | 'seat' | 'pull' | 'leastBreakingN' | 'insteadOf' | 'at'
> & { readonly isComing: boolean };

/** What was found of the ends of a run and stands, what waits on this screen included; the oldest first. */
export function useEndChecks(runId: string, leastBreakingN: number | undefined): readonly ShownCheck[] {
  const kept = useWholeReading('end-checks', { runId }).data;
  const coming = useComing();
  return useMemo(() => {
    const known: readonly ShownCheck[] = (kept ?? []).map((row) => ({ ...row, isComing: false }));
    const ids = new Set(known.map(({ id }) => id));
    const entered = coming
      .flatMap((entry) => rowsOf(entry, runId, leastBreakingN))
      .filter(({ id }) => !ids.has(id));
    return standingChecks([...known, ...entered]);
  }, [kept, coming, runId, leastBreakingN]);
}

function rowsOf(
  entry: QueuedEntry,
  runId: string,
  leastBreakingN: number | undefined,
): readonly ShownCheck[] {
  if (!isOf(entry, 'record-end-checks')) return [];
  return entry.input.rows
    .filter((row) => row.runId === runId)
    .map(({ insteadOf = null, ...row }) => ({
      ...row,
      insteadOf,
      leastBreakingN: leastBreakingN ?? null,
      at: entry.at,
      isComing: true,
    }));
}
