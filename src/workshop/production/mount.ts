import { SPOOL_LIFE } from '../../core/stock/index.js';
import { needRecord, stepRecord } from '../record-change.js';
import { refuse } from '../refusal.js';
import { liveRuns, type RunRecord } from '../stock/live-runs.js';
import { offMachine } from '../stock/off-machine.js';
import type { SpoolRecord } from '../stock/spool-book.js';
import type { Work } from '../use-case.js';

/** Puts a spool on a machine. One that is there already (for a paused run) stays. */
export async function mount(work: Work, spoolId: string, machineId: string): Promise<SpoolRecord> {
  const { tx } = work;
  const record = await needRecord(tx, 'spool', spoolId);
  const { name, machineId: where } = record.body;
  const spool = { spoolId, spoolName: name };
  if (record.state === 'on-machine') {
    if (where === machineId || where === undefined) return record;
    const machine = await needRecord(tx, 'machine', where);
    refuse({ code: 'run.spool-elsewhere', ...spool, machineId: where, machineName: machine.body.name });
  }
  if (record.state !== 'on-shelf') refuse({ code: 'run.spool-not-usable', ...spool, state: record.state });
  const body = { ...record.body, machineId };
  return stepRecord(work, 'spool', { record, life: SPOOL_LIFE, step: 'mount', body });
}

/** A spool that comes off a run. */
export interface ComingOff {
  readonly record: SpoolRecord;
  readonly run: RunRecord;
  /** Where it was put on the scale. */
  readonly weighed?: { readonly grossKg: number; readonly at: string } | undefined;
  readonly isUsedUp: boolean;
}

/** Takes a spool off for a run: to the shelf, or out of use where no wire is left. It stays on where another run of the machine has it too. */
export async function dismount(work: Work, { record, run, weighed, isUsedUp }: ComingOff): Promise<void> {
  const { tx, now } = work;
  const body = { ...record.body, ...(weighed ? { weighed } : {}) };
  const others = (await liveRuns(tx, run.body.machineId)).filter(({ id }) => id !== run.id);
  if (!isUsedUp && others.some((other) => other.body.spoolIds.includes(record.id))) {
    await tx.records.update('spool', { id: record.id, expectedVersion: record.version, body, at: now });
    return;
  }
  const step = isUsedUp ? 'finish' : 'dismount';
  await stepRecord(work, 'spool', { record, life: SPOOL_LIFE, step, body: offMachine(body) });
}
