import { useMemo } from 'react';
import { type RecordOf, useReading } from '../../api/use-records.js';
import { useWholeReading } from '../../api/use-whole-reading.js';
import { isOf, type QueuedEntry, takenBackIn, useComing } from '../../outbox/index.js';
import { eachOnce, type Tally } from '../../parts/tallies.js';
import { useWords } from '../../words/language.js';
import { SCRAP_WORDS } from '../../words/machine.js';
import { runAsComing } from './run-as-coming.js';
import { type RunCount, runCount, type Trial } from './run-count.js';
import type { Reading } from './trial-readings.js';

/** Where and by whom it was entered; `rank` sorts what the shop has by its moment, and what waits here after that by its turn. */
interface Entered {
  readonly id: string;
  readonly at: string;
  readonly by: string;
  readonly rank: string;
}

/** A reading of the run, and of which of its strings. */
export type RunReading = Reading & Entered & { readonly trialStringId: string | null };
export type RunTally = Tally & Entered;

/** All that is known of a run, what waits on this screen included; without what was taken back. */
export interface RunBook {
  readonly run: RecordOf<'run'>;
  readonly trials: readonly (Trial & Entered)[];
  /** The oldest first. */
  readonly readings: readonly RunReading[];
  /** The oldest first. */
  readonly tallies: readonly RunTally[];
  readonly count: RunCount;
  /** Of the next trial string: numbers of those that were taken back stay taken. */
  readonly nextNumber: number;
  /** Whether something of it is not with the shop yet. */
  readonly isOnTheWay: boolean;
}

/** Without a line, and never asked before, a run has nothing but what was entered here. */
export function useRunBook(record: RecordOf<'run'>): RunBook {
  const runId = record.id;
  const words = useWords(SCRAP_WORDS);
  const all = useComing();
  const tallies = useWholeReading('tallies', { runId }).data;
  const trials = useReading('trial-strings', { runId }).data?.items;
  const readings = useWholeReading('measurements', { runId }).data;
  const voided = useReading('voided-entries', { runId }).data?.items;
  const coming = useMemo(() => all.filter(({ about }) => about.includes(runId)), [all, runId]);
  return useMemo(() => {
    const isGone = takenBackIn(coming);
    const numbered = trialsAsComing(trials ?? [], coming);
    const trialsNow = numbered.filter(({ id }) => !isGone.has(id));
    const talliesNow = eachOnce<RunTally>(
      (tallies ?? []).map(known),
      coming.flatMap((entry) => (isOf(entry, 'record-tally') ? { ...entry.input, ...entered(entry) } : [])),
    ).filter(({ id }) => !isGone.has(id));
    const readingsNow = eachOnce<RunReading>(
      (readings ?? []).map(known),
      coming.flatMap((entry) =>
        isOf(entry, 'record-measurements')
          ? entry.input.rows.map(({ trialStringId = null, ...row }) => ({
              ...row,
              trialStringId,
              ...entered(entry),
            }))
          : [],
      ),
    ).filter(({ id, trialStringId }) => !isGone.has(id) && !isGone.has(trialStringId ?? ''));
    const numbers = [
      ...numbered.map(({ number }) => number),
      ...(voided ?? []).map(({ was }) => (was.of === 'trial-string' ? was.number : 0)),
    ];
    return {
      run: runAsComing(record, coming),
      trials: trialsNow,
      readings: readingsNow,
      tallies: talliesNow,
      count: runCount(talliesNow, trialsNow, words.dialling),
      nextNumber: Math.max(0, ...numbers) + 1,
      isOnTheWay: coming.some(({ state }) => state !== 'done'),
    };
  }, [record, coming, tallies, trials, readings, voided, words]);
}

const known = <Row extends { readonly at: string }>(row: Row): Row & { readonly rank: string } => ({
  ...row,
  rank: `0 ${row.at}`,
});

const entered = ({ at, by, number }: QueuedEntry) => ({
  at,
  by: `person/${by.id}`,
  rank: `1 ${String(number).padStart(12, '0')}`,
});

function trialsAsComing(
  told: readonly Trial[],
  coming: readonly QueuedEntry[],
): readonly (Trial & Entered)[] {
  const wound = coming.flatMap((entry) =>
    isOf(entry, 'record-trial-string') ? { ...entry.input, verdict: 'open' as const, ...entered(entry) } : [],
  );
  const verdicts = new Map(
    coming.flatMap((entry) =>
      isOf(entry, 'judge-trial-string') ? [[entry.input.trialStringId, entry.input.verdict] as const] : [],
    ),
  );
  return eachOnce<Trial & Entered>(told.map(known), wound)
    .map((trial) => ({ ...trial, verdict: verdicts.get(trial.id) ?? trial.verdict }))
    .toSorted((one, other) => one.number - other.number);
}
