import type { UseQueryResult } from '@tanstack/react-query';
import { useMemo } from 'react';
import { type RecordOf, useAllRecords, useRecord } from '../../api/use-records.js';
import { useComing } from '../../outbox/index.js';
import { runAsComing } from './run-as-coming.js';

type Run = RecordOf<'run'>;

/** What runs on a machine, is paused there and is planned for it, as it will be with what waits on this screen. */
export function useRunsHere(machineId: string): {
  readonly question: UseQueryResult<readonly Run[]>;
  readonly runs: readonly Run[];
} {
  const planned = useAllRecords('run', { machineId, state: 'planned' });
  const running = useAllRecords('run', { machineId, state: 'running' });
  const paused = useAllRecords('run', { machineId, state: 'paused' });
  const coming = useComing();
  const runs = useMemo(
    () =>
      [...(running.data ?? []), ...(paused.data ?? []), ...(planned.data ?? [])].map((run) =>
        runAsComing(run, coming),
      ),
    [running.data, paused.data, planned.data, coming],
  );
  return { question: planned, runs };
}

/** A run as it was last heard of: by itself, or in the lists of its machine; without a line the lists may be all there is. */
export function useRunHeardOf(
  runId: string,
  machineId: string,
): { readonly question: UseQueryResult<Run>; readonly run: Run | undefined } {
  const question = useRecord('run', runId);
  const listed = [
    useAllRecords('run', { machineId, state: 'running' }).data,
    useAllRecords('run', { machineId, state: 'paused' }).data,
    useAllRecords('run', { machineId, state: 'planned' }).data,
    // Of another machine, where its cores are ended at this one.
    useAllRecords('run', { state: 'planned' }).data,
  ].flatMap((runs) => runs?.find(({ id }) => id === runId) ?? []);
  const heard = question.data ? [question.data, ...listed] : listed;
  const run = heard.toSorted((one, other) => other.version - one.version)[0];
  return { question, run };
}
