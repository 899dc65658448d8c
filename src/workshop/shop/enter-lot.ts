import { enterLot as definition } from '../../contract/index.js';
import { succeed } from '../../core/foundation/index.js';
import { stringKey } from '../../core/sets/index.js';
import { countDifference } from '../../core/stock/index.js';
import { needRecord } from '../record-change.js';
import { post } from '../stock/post.js';
import { refuseOtherKind } from '../stock/strings-in-bin.js';
import { useCase } from '../use-case.js';

/** Strings that lie there without a run behind them: found by counting, so the ledger has them from there. */
export const enterLot = useCase(definition, async (work, { id, name, spec, binId, counted, reason }) => {
  const { tx, actor, now } = work;
  const key = stringKey(spec);
  refuseOtherKind(await needRecord(tx, 'bin', binId), key);
  const lot = await tx.records.insert('string-lot', {
    id,
    state: 'released',
    at: now,
    body: {
      name,
      spec,
      stringKey: key,
      made: counted,
      spoolIds: [],
      ...(actor.personId === undefined ? {} : { releasedBy: actor.personId }),
    },
  });
  const string = { stringKey: key, lotId: id };
  await post(work, countDifference({ string, binId, onBook: 0, counted, reason }));
  return succeed(lot);
});
