import { moveStrings as definition } from '../../contract/index.js';
import { fail, succeed } from '../../core/foundation/index.js';
import { moveStrings as moveMovement } from '../../core/stock/index.js';
import type { ReadTransaction } from '../../store/index.js';
import { needRecord } from '../record-change.js';
import { useCase } from '../use-case.js';
import { post } from './post.js';
import { type LotRecord, refuseOtherKind, refuseTooMany, stringsInBin } from './strings-in-bin.js';

/**
 * Carries strings of a lot to another bin. A lot on hold may only go where no other strings lie: packers take
 * from a bin, and must not find held strings among good ones.
 */
export const moveStrings = useCase(definition, async (work, { lotId, fromBinId, toBinId, count }) => {
  const { tx } = work;
  const lot = await needRecord(tx, 'string-lot', lotId);
  const from = await needRecord(tx, 'bin', fromBinId);
  const to = await needRecord(tx, 'bin', toBinId);
  if (from.id === to.id) return fail({ code: 'bin.same', binId: to.id, binName: to.body.name });
  refuseOtherKind(to, lot.body.stringKey);
  if (lot.state === 'on-hold' && (await holdsOthers(tx, to.id, lot))) {
    const { name, holdReason } = lot.body;
    return fail({ code: 'lot.on-hold', lotId, lotName: name, holdReason, binName: to.body.name });
  }
  await refuseTooMany(tx, { bin: from, lot, count });
  const string = { stringKey: lot.body.stringKey, lotId };
  await post(work, moveMovement({ string, fromBinId, toBinId, count }));
  return succeed({
    fromBin: await stringsInBin(tx, { binId: fromBinId, lot }),
    toBin: await stringsInBin(tx, { binId: toBinId, lot }),
  });
});

async function holdsOthers({ ledger }: ReadTransaction, binId: string, lot: LotRecord): Promise<boolean> {
  const held = await ledger.balances({ account: `bin/${binId}` });
  return held.some((balance) => balance.item.startsWith('string/') && balance.lot !== lot.id);
}
