import type { Recipe } from '../recipes/index.js';
import type { Instrument, StringSet, Tuning } from '../sets/index.js';
import type { StringStock } from '../stock/index.js';
import type { SeatModel } from '../string/index.js';

/** What an order is read and resolved against: all that the shop can make and knows by name. */
export interface Catalogue {
  readonly recipes: readonly Recipe[];
  readonly sets: readonly StringSet[];
  /** Instruments and tunings that an orders file may call by name. */
  readonly instruments: readonly Instrument[];
  readonly tunings: readonly NamedTuning[];
  /** What lies on the shelf: a request prefers it. */
  readonly strings: readonly StringStock[];
  readonly rules: ShopRules;
  /** Left out where no strings were measured yet: the prior predicts. */
  readonly seat?: SeatModel;
}

export interface NamedTuning {
  readonly name: string;
  readonly tuning: Tuning;
}

/** What the shop has settled for itself. */
export interface ShopRules {
  /** Lots are rounded up to a multiple of this many strings. */
  readonly lotSize: number;
  /** Most that a string's stress may be of its wire's minimum strength. */
  readonly stressLimit: number;
  /** A gauge with no `plain` or `wound` beside it is plain up to this one. */
  readonly plainUpToThou: number;
  /** Thickest plain string and thinnest wound one that the shop makes. */
  readonly thickestPlainThou: number;
  readonly thinnestWoundThou: number;
  /** Length over all of a string for scales up to `standardScaleUpToM`, and of a long one above. */
  readonly standardLengthM: number;
  readonly longLengthM: number;
  readonly standardScaleUpToM: number;
  /** When work begins, minutes after midnight, and on which days of the week (1 Monday). */
  readonly dayStartsAtMinute: number;
  readonly workingDays: readonly number[];
}

/** Strings are cut in two lengths, m: one for scales up to the shop's standard (and where none is told), one for longer ones. */
export const lengthOverAllM = (
  rules: Pick<ShopRules, 'standardLengthM' | 'longLengthM' | 'standardScaleUpToM'>,
  longestScaleM = 0,
): number => (longestScaleM <= rules.standardScaleUpToM ? rules.standardLengthM : rules.longLengthM);
