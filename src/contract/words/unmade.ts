import type { UnmadeLot } from '../../core/day/index.js';
import { formatDecimal } from '../../core/units/index.js';

/** Why a bin is not filled, as a sentence. */
export function unmadeInWords(lot: UnmadeLot): string {
  if (lot.because === 'recipe') return 'The shop has no recipe for it.';
  if (lot.because === 'machine') return 'No machine of the shop can make it.';
  const wire = lot.wireId === undefined ? 'Its wire' : `Wire ${lot.wireId}`;
  const short = lot.shortKg === undefined ? '' : `: ${formatDecimal(lot.shortKg, 3)} kg too little`;
  return `${wire} does not suffice${short}. Orders come first.`;
}
