import { weighSpool as definition } from '../../contract/index.js';
import { fail, succeed } from '../../core/foundation/index.js';
import { SPOOL_LIFE, weighDifference } from '../../core/stock/index.js';
import { recordAsSeen, saveRecord, stepRecord } from '../record-change.js';
import { useCase } from '../use-case.js';
import { runOfSpool } from './live-runs.js';
import { offMachine } from './off-machine.js';
import { onTheScale } from './on-the-scale.js';
import { post } from './post.js';
import { spoolOnBook } from './spool-book.js';

/**
 * The scale's word over the book's: the difference is written as a weighing difference. Wire missing from a
 * spool in a run is not: that is the run's use, and the run takes it off by weight. Wire found there may be written.
 */
export const weighSpool = useCase(definition, async (work, input) => {
  const { tx, now } = work;
  const spool = await recordAsSeen(tx, 'spool', { ...input, id: input.spoolId });
  if (spool.state === 'empty') {
    return fail({ code: 'spool.empty', spoolId: spool.id, spoolName: spool.body.name });
  }
  const { book } = await spoolOnBook(tx, spool);
  const { foundMg, weighed } = onTheScale(spool, { ...input, at: now });
  const run = foundMg <= book.mg ? await runOfSpool(tx, spool) : undefined;
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
  await post(work, weighDifference({ spool: book, foundMg, reason: input.reason ?? 'weighing' }));
  const body = { ...spool.body, weighed };
  const record =
    foundMg === 0 && spool.state !== 'quarantined'
      ? await stepRecord(work, 'spool', {
          record: spool,
          life: SPOOL_LIFE,
          step: 'finish',
          body: offMachine(body),
        })
      : await saveRecord(work, 'spool', { id: spool.id, expectedVersion: spool.version, body });
  return succeed({ record, differenceMg: foundMg - book.mg });
});
