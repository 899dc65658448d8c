import { sealPack as definition } from '../../contract/index.js';
import { succeed } from '../../core/foundation/index.js';
import { PACK_LIFE, sealPack as sealMovement } from '../../core/stock/index.js';
import { recordAsSeen, stepRecord } from '../record-change.js';
import { refuse } from '../refusal.js';
import { post } from '../stock/post.js';
import { useCase } from '../use-case.js';
import { lotsNotReleased } from './lots-not-released.js';

/** A whole pack is closed: its strings and the set that they make are its own from now on. */
export const sealPack = useCase(definition, async (work, { packId, expectedVersion }) => {
  const { tx, now } = work;
  const pack = await recordAsSeen(tx, 'pack', { id: packId, expectedVersion });
  const { wanted, picked, orderId, setName } = pack.body;
  const sealed = await stepRecord(work, 'pack', {
    record: pack,
    life: PACK_LIFE,
    step: 'seal',
    body: { ...pack.body, sealedAt: now },
  });
  const filled = new Set(picked.map(({ position }) => position));
  const missing = wanted.filter(({ position }) => !filled.has(position));
  if (missing.length > 0)
    refuse({
      code: 'pack.positions-missing',
      packId,
      missing: missing.map(({ position, stringKey }) => ({ position, stringKey })),
    });
  const held = await lotsNotReleased(tx, [pack]);
  if (held.length > 0) refuse({ code: 'pack.lots-not-released', packId, lots: held });
  await post(work, sealMovement({ packId, orderId, setName, strings: picked }));
  return succeed(sealed);
});
