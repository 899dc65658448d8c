import { unpickString as definition } from '../../contract/index.js';
import { succeed } from '../../core/foundation/index.js';
import { unpickString as unpickMovement } from '../../core/stock/index.js';
import { recordAsSeen } from '../record-change.js';
import { refuse } from '../refusal.js';
import { post } from '../stock/post.js';
import { useCase } from '../use-case.js';
import { needOpen } from './need-open.js';

/** A string of an open pack goes back to the bin that it came from. */
export const unpickString = useCase(definition, async (work, { packId, expectedVersion, position }) => {
  const { tx, now } = work;
  const pack = await recordAsSeen(tx, 'pack', { id: packId, expectedVersion });
  needOpen(pack);
  const { orderId, picked } = pack.body;
  const string = picked.find((each) => each.position === position);
  if (!string) return refuse({ code: 'pack.nothing-picked', packId, position });
  await post(work, unpickMovement({ string, binId: string.binId, orderId, packId }));
  const body = { ...pack.body, picked: picked.filter((each) => each !== string) };
  return succeed(
    await tx.records.update('pack', { id: packId, expectedVersion, state: 'open', body, at: now }),
  );
});
