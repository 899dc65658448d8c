import { useMemo } from 'react';
import { type RecordOf, useReading } from '../../api/use-records.js';
import { useWholeReading } from '../../api/use-whole-reading.js';
import { isOf, useComing } from '../../outbox/index.js';
import { eachOnce, type Tally } from '../../parts/tallies.js';
import { useWords } from '../../words/language.js';
import { SCRAP_WORDS } from '../../words/machine.js';
import { runAsComing } from './run-as-coming.js';
import { type RunCount, runCount, type Trial } from './run-count.js';
import type { Reading } from './trial-readings.js';

/** A reading of the run, and of which of its strings. */
export type RunReading = Reading & { readonly trialStringId: string | null };

/** All that is known of a run, what waits on this screen included. */
export interface RunBook {
  readonly run: RecordOf<'run'>;
  readonly trials: readonly Trial[];
  /** The oldest first. */
  readonly readings: readonly RunReading[];
  readonly count: RunCount;
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
  const coming = useMemo(() => all.filter(({ about }) => about.includes(runId)), [all, runId]);
  return useMemo(() => {
    const trialsNow = trialsAsComing(trials ?? [], coming);
    const talliesNow = eachOnce<Tally>(
      tallies ?? [],
      coming.flatMap((entry) => (isOf(entry, 'record-tally') ? entry.input : [])),
    );
    const readingsNow = eachOnce<RunReading & { readonly id: string }>(
      readings ?? [],
      coming.flatMap((entry) =>
        isOf(entry, 'record-measurements')
          ? entry.input.rows.map(({ trialStringId = null, ...row }) => ({ ...row, trialStringId }))
          : [],
      ),
    );
    return {
      run: runAsComing(record, coming),
      trials: trialsNow,
      readings: readingsNow,
      count: runCount(talliesNow, trialsNow, words.dialling),
      isOnTheWay: coming.some(({ state }) => state !== 'done'),
    };
  }, [record, coming, tallies, trials, readings, words]);
}

function trialsAsComing(known: readonly Trial[], coming: ReturnType<typeof useComing>): readonly Trial[] {
  const entered = coming.flatMap((entry) =>
    isOf(entry, 'record-trial-string')
      ? { ...entry.input, verdict: 'open' as const, at: entry.at, by: entry.by.id }
      : [],
  );
  const verdicts = new Map(
    coming.flatMap((entry) =>
      isOf(entry, 'judge-trial-string') ? [[entry.input.trialStringId, entry.input.verdict] as const] : [],
    ),
  );
  return eachOnce(known, entered)
    .map((trial) => ({ ...trial, verdict: verdicts.get(trial.id) ?? trial.verdict }))
    .toSorted((one, other) => one.number - other.number);
}
