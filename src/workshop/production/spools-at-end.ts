import type { ReadTransaction } from '../../store/index.js';
import { needRecord } from '../record-change.js';
import { refuse } from '../refusal.js';
import type { RunRecord } from '../stock/live-runs.js';
import { onTheScale } from '../stock/on-the-scale.js';
import { spoolOnBook } from '../stock/spool-book.js';
import type { SpoolAtEnd } from './wire-taken.js';

export interface Weighing {
  readonly spoolId: string;
  readonly grossKg?: number;
}

/** All spools of a run as they stand at its end, each with its weighing where there was one. */
export async function spoolsAtEnd(
  tx: Pick<ReadTransaction, 'records' | 'ledger'>,
  run: RunRecord,
  { weighings, at }: { readonly weighings: readonly Weighing[]; readonly at: string },
): Promise<readonly SpoolAtEnd[]> {
  const stray = weighings.find(({ spoolId }) => !run.body.spoolIds.includes(spoolId));
  if (stray) {
    const { body } = await needRecord(tx, 'spool', stray.spoolId);
    refuse({
      code: 'run.spool-not-on-it',
      spoolId: stray.spoolId,
      spoolName: body.name,
      runName: run.body.name,
    });
  }
  const spools: SpoolAtEnd[] = [];
  for (const spoolId of run.body.spoolIds) {
    const spool = await spoolOnBook(tx, await needRecord(tx, 'spool', spoolId));
    const grossKg = weighings.find((weighing) => weighing.spoolId === spoolId)?.grossKg;
    const scale = grossKg === undefined ? undefined : onTheScale(spool.record, { grossKg, at });
    spools.push({ ...spool, scale });
  }
  return spools;
}

/** Wire of a kind that spools gave which were taken off the run before, mg. */
export async function takenOffBefore(
  tx: Pick<ReadTransaction, 'records'>,
  run: RunRecord,
): Promise<(wireId: string) => number> {
  const byWire = new Map<string, number>();
  for (const { spoolId, mg } of run.body.takenOff ?? []) {
    const { wireId } = (await needRecord(tx, 'spool', spoolId)).body;
    byWire.set(wireId, (byWire.get(wireId) ?? 0) + mg);
  }
  return (wireId) => byWire.get(wireId) ?? 0;
}
