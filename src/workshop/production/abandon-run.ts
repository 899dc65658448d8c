import { abandonRun as definition } from '../../contract/index.js';
import { succeed } from '../../core/foundation/index.js';
import { RUN_LIFE } from '../../core/stock/index.js';
import { recordAsSeen, stepRecord } from '../record-change.js';
import { useCase } from '../use-case.js';
import { spoolsAtEnd } from './spools-at-end.js';
import { takeOff, type WireUsed } from './take-off.js';

/** Gives a run up. What weighed spools lost is scrap; of the others nothing is known to have gone. */
export const abandonRun = useCase(definition, async (work, input) => {
  const { tx, now } = work;
  const run = await recordAsSeen(tx, 'run', { ...input, id: input.runId });
  const wire: WireUsed[] = [];
  for (const spool of await spoolsAtEnd(tx, run, { weighings: input.spools ?? [], at: now })) {
    const mg = spool.scale ? Math.max(0, spool.book.mg - spool.scale.foundMg) : 0;
    const how = spool.scale ? 'weighed' : 'computed';
    const made = { good: 0, scrap: [{ reason: input.reason, count: 1 }] };
    wire.push(await takeOff(work, run, { ...spool, mg, how }, made));
  }
  const body = { ...run.body, spoolIds: [], closedAt: now, note: input.reason };
  const abandoned = await stepRecord(work, 'run', { record: run, life: RUN_LIFE, step: 'abandon', body });
  return succeed({ run: abandoned, wire: wire.filter(({ mg }) => mg > 0) });
});
