import { stepsFrom } from '../../core/foundation/index.js';
import { PACK_LIFE } from '../../core/stock/index.js';
import { refuse } from '../refusal.js';
import type { Pack } from './packs-of-order.js';

/** Strings go in and out of open packs only. */
export function needOpen({ id, state }: Pack): void {
  if (state !== 'open')
    refuse({ code: 'pack.not-open', packId: id, state, allowed: stepsFrom(PACK_LIFE, state) });
}
