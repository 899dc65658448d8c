import {
  freeSpool as freeDefinition,
  quarantineSpool as quarantineDefinition,
} from '../../contract/index.js';
import { fail, succeed } from '../../core/foundation/index.js';
import { SPOOL_LIFE } from '../../core/stock/index.js';
import { recordAsSeen, stepRecord } from '../record-change.js';
import { useCase } from '../use-case.js';
import { runOfSpool } from './live-runs.js';
import { offMachine } from './off-machine.js';

/** Keeps a spool from use. One that a run is winding from must come off that run first, by weight. */
export const quarantineSpool = useCase(quarantineDefinition, async (work, input) => {
  const spool = await recordAsSeen(work.tx, 'spool', { ...input, id: input.spoolId });
  const run = await runOfSpool(work.tx, spool);
  if (run) {
    const { name } = run.body;
    return fail({
      code: 'spool.in-run',
      spoolId: spool.id,
      spoolName: spool.body.name,
      runId: run.id,
      runName: name,
    });
  }
  const body = { ...offMachine(spool.body), holdReason: input.reason };
  return succeed(
    await stepRecord(work, 'spool', { record: spool, life: SPOOL_LIFE, step: 'quarantine', body }),
  );
});

/** Lets a spool be used again. */
export const freeSpool = useCase(freeDefinition, async (work, input) => {
  const spool = await recordAsSeen(work.tx, 'spool', { ...input, id: input.spoolId });
  const { holdReason: _, ...body } = spool.body;
  return succeed(await stepRecord(work, 'spool', { record: spool, life: SPOOL_LIFE, step: 'free', body }));
});
