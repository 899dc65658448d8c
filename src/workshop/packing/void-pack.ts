import { voidPack as definition } from '../../contract/index.js';
import { succeed } from '../../core/foundation/index.js';
import { PACK_LIFE, unpickString, voidPack as voidMovement } from '../../core/stock/index.js';
import { recordAsSeen, stepRecord } from '../record-change.js';
import { post } from '../stock/post.js';
import { useCase, type Work } from '../use-case.js';
import type { Pack } from './packs-of-order.js';

/** A pack is given up; the record keeps what was in it, the ledger has it back in its bins. */
export const voidPack = useCase(definition, async (work, { packId, expectedVersion, reason }) => {
  const pack = await recordAsSeen(work.tx, 'pack', { id: packId, expectedVersion });
  const given = await stepRecord(work, 'pack', { record: pack, life: PACK_LIFE, step: 'void' });
  if (pack.state === 'sealed') await unseal(work, pack, reason);
  else await layBack(work, pack);
  return succeed(given);
});

async function unseal(work: Work, { id, body }: Pack, reason: string): Promise<void> {
  const holds = await work.tx.ledger.balances({ account: `pack/${id}` });
  const back = body.picked.map((string) => ({ string, binId: string.binId }));
  await post(work, voidMovement({ packId: id, holds, back, reason }));
}

async function layBack(work: Work, { id, body: { orderId, picked } }: Pack): Promise<void> {
  for (const string of picked)
    await post(work, unpickString({ string, binId: string.binId, orderId, packId: id }));
}
