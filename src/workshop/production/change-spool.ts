import { changeSpool as definition } from '../../contract/index.js';
import { fail, succeed } from '../../core/foundation/index.js';
import { takeWire, weighDifference } from '../../core/stock/index.js';
import { needRecord, recordAsSeen, saveRecord } from '../record-change.js';
import { onTheScale } from '../stock/on-the-scale.js';
import { post } from '../stock/post.js';
import { spoolOnBook } from '../stock/spool-book.js';
import { useCase } from '../use-case.js';
import { dismount, mount } from './mount.js';
import { refuseNotLive } from './refuse-not-live.js';
import { refuseWire } from './spools-for-recipe.js';

/**
 * Takes a spool off a run and mounts another of its wire. What the old one lost since it was last on the books
 * was wound by this run; where it weighs more than the books say, the books were short, and that is written.
 */
export const changeSpool = useCase(definition, async (work, input) => {
  const { tx, now } = work;
  const { oldSpoolId, oldGrossKg, newSpoolId } = input;
  const run = await recordAsSeen(tx, 'run', { ...input, id: input.runId });
  refuseNotLive(run);
  const old = await spoolOnBook(tx, await needRecord(tx, 'spool', oldSpoolId));
  if (!run.body.spoolIds.includes(oldSpoolId)) {
    const { name } = old.record.body;
    return fail({
      code: 'run.spool-not-on-it',
      spoolId: oldSpoolId,
      spoolName: name,
      runName: run.body.name,
    });
  }
  if (run.body.spoolIds.includes(newSpoolId)) {
    const { name } = (await needRecord(tx, 'spool', newSpoolId)).body;
    return fail({ code: 'run.spool-on-it', spoolId: newSpoolId, spoolName: name, runName: run.body.name });
  }
  const fresh = await mount(work, newSpoolId, run.body.machineId);
  if (fresh.body.wireId !== old.wire.id) await refuseWire(tx, fresh, [old.wire.id]);

  const { foundMg, weighed } = onTheScale(old.record, { grossKg: oldGrossKg, at: now });
  const usedMg = Math.max(0, old.book.mg - foundMg);
  if (foundMg > old.book.mg) {
    await post(work, weighDifference({ spool: old.book, foundMg, reason: 'weighing' }));
  }
  await post(work, takeWire({ spool: old.book, runId: run.id, woundMg: usedMg, scrap: [] }));
  await dismount(work, { record: old.record, run, weighed, isUsedUp: foundMg === 0 });
  const body = {
    ...run.body,
    spoolIds: run.body.spoolIds.map((id) => (id === oldSpoolId ? newSpoolId : id)),
    takenOff: [...(run.body.takenOff ?? []), { spoolId: oldSpoolId, mg: usedMg }],
  };
  const record = await saveRecord(work, 'run', { id: run.id, expectedVersion: run.version, body });
  return succeed({ record, usedMg });
});
