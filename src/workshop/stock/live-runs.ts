import type { BodyOf, StoredRecord } from '../../contract/index.js';
import type { ReadTransaction } from '../../store/index.js';

export type RunRecord = StoredRecord<BodyOf<'run'>>;

/**
 * Runs that are begun and not ended on a machine: the one that runs first, then those paused. Asked by state, of
 * which there are few in the whole shop; a machine has had thousands.
 */
export async function liveRuns(
  { records }: Pick<ReadTransaction, 'records'>,
  machineId: string,
): Promise<readonly RunRecord[]> {
  const begun = [
    ...(await records.all('run', { state: 'running' })),
    ...(await records.all('run', { state: 'paused' })),
  ];
  return begun.filter(({ body }) => body.machineId === machineId);
}

/** The run that a spool is mounted for, if any. */
export async function runOfSpool(
  tx: Pick<ReadTransaction, 'records'>,
  spool: StoredRecord<BodyOf<'spool'>>,
): Promise<RunRecord | undefined> {
  const { machineId } = spool.body;
  if (machineId === undefined) return undefined;
  return (await liveRuns(tx, machineId)).find(({ body }) => body.spoolIds.includes(spool.id));
}
