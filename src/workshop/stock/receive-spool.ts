import { receiveSpool as definition } from '../../contract/index.js';
import { fail, succeed } from '../../core/foundation/index.js';
import { mgFromKg, receiveWire, SPOOL_LIFE } from '../../core/stock/index.js';
import { needRecord } from '../record-change.js';
import { useCase } from '../use-case.js';
import { post } from './post.js';
import { unitWeightKgPerM } from './spool-book.js';

/** Takes in a spool: its record, and its wire from the supplier. */
export const receiveSpool = useCase(definition, async (work, input) => {
  const { tx, now } = work;
  const { id, wireId, name, lot, grossKg, tareKg, certificate } = input;
  const wire = await needRecord(tx, 'wire', wireId);
  const mg = mgFromKg(grossKg - tareKg);
  if (mg <= 0) return fail({ code: 'spool.nothing-on-it', grossKg, tareKg });
  const record = await tx.records.insert('spool', {
    id,
    state: SPOOL_LIFE.initial,
    body: {
      name,
      wireId,
      lot,
      tareKg,
      receivedAt: now,
      ...(certificate ? { certificate } : {}),
      weighed: { grossKg, at: now },
    },
    at: now,
  });
  await post(work, receiveWire({ spoolId: id, wireId, mg, unitWeightKgPerM: unitWeightKgPerM(wire) }));
  return succeed(record);
});
