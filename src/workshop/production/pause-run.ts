import { pauseRun as pauseDefinition, resumeRun as resumeDefinition } from '../../contract/index.js';
import { succeed } from '../../core/foundation/index.js';
import { RUN_LIFE } from '../../core/stock/index.js';
import { needRecord, recordAsSeen, stepRecord } from '../record-change.js';
import { useCase } from '../use-case.js';
import { refuseBusy } from './free-machine.js';

/** Stops a run for a while. Its spools stay on the machine. */
export const pauseRun = useCase(pauseDefinition, async (work, input) => {
  const record = await recordAsSeen(work.tx, 'run', { ...input, id: input.runId });
  return succeed(await stepRecord(work, 'run', { record, life: RUN_LIFE, step: 'pause' }));
});

/** Goes on with a run, once its machine is free again. */
export const resumeRun = useCase(resumeDefinition, async (work, input) => {
  const run = await recordAsSeen(work.tx, 'run', { ...input, id: input.runId });
  const machine = await needRecord(work.tx, 'machine', run.body.machineId);
  await refuseBusy(work.tx, { machine, run });
  return succeed(await stepRecord(work, 'run', { record: run, life: RUN_LIFE, step: 'resume' }));
});
