import { DRY_ROOM_PRACTICE, type DryRoomLimits } from '../../core/stock/index.js';
import type { ReadTransaction } from '../../store/index.js';

/** What the dry room is held to: as the shop settled, else common practice. */
export async function dryRoomLimits({
  records,
}: Pick<ReadTransaction, 'records'>): Promise<
  DryRoomLimits & { readonly basis: 'shop' | 'common-practice' }
> {
  const [settled] = await records.all('settings');
  const own = settled?.body.limits?.dryRoom;
  return own ? { ...own, basis: 'shop' } : { ...DRY_ROOM_PRACTICE, basis: 'common-practice' };
}
