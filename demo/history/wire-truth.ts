import { seededChance } from '../../src/core/foundation/index.js';
import type { BadWireLot } from './causes.js';
import { normal } from './normal.js';

/** What the wire of a maker's lot truly is, beside its nominal diameter. */
export interface WireTruth {
  /** Mean diameter off the nominal, as a share of it. */
  readonly offShare: number;
  /** Standard deviation of the diameter along the wire, as a share of it. */
  readonly spreadShare: number;
}

/** Invented, well inside what standards of wire allow. */
const LOT_TO_LOT_SHARE = 0.0015;
const SOUND_SPREAD_SHARE = 0.001;

/** The same lot is always the same wire, whoever asks and when. */
export function wireTruth(lot: string, { lot: bad, offShare, spreadShare }: BadWireLot): WireTruth {
  if (lot === bad) return { offShare, spreadShare };
  return { offShare: normal(seededChance(seedOf(lot)), LOT_TO_LOT_SHARE), spreadShare: SOUND_SPREAD_SHARE };
}

/** A number of a text (FNV-1a, 32 bits). */
function seedOf(text: string): number {
  let hash = 0x811c9dc5;
  for (const letter of text) hash = Math.imul(hash ^ letter.charCodeAt(0), 0x01000193) >>> 0;
  return hash;
}
