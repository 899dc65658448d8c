import type { ReadTransaction } from '../../store/index.js';
import { refuse } from '../refusal.js';
import { liveRuns, type RunRecord } from '../stock/live-runs.js';
import type { MachineRecord } from './recipe-in-core.js';

/** Refuses while another run goes on the machine. A paused one leaves it free for what is pressing. */
export async function refuseBusy(
  tx: Pick<ReadTransaction, 'records'>,
  { machine, run }: { readonly machine: MachineRecord; readonly run: RunRecord },
): Promise<void> {
  const other = (await liveRuns(tx, machine.id)).find(
    ({ id, state }) => state === 'running' && id !== run.id,
  );
  if (!other) return;
  refuse({
    code: 'run.machine-busy',
    machineId: machine.id,
    machineName: machine.body.name,
    runId: other.id,
    runName: other.body.name,
  });
}
