import type { CostRates } from '../costing/index.js';
import type { Recipe } from '../recipes/index.js';
import type { Instrument, StringSet, Tuning } from '../sets/index.js';
import type { Bin, Spool, StringStock, Wire } from '../stock/index.js';
import type { SeatModel } from '../string/index.js';
import type { Machine } from '../winding/index.js';

/** Everything the shop owns and has settled that a day's work depends on. */
export interface Shop {
  readonly name: string;
  /** True for the invented workshop, so that every document can say so. */
  readonly invented: boolean;
  readonly wires: readonly Wire[];
  readonly spools: readonly Spool[];
  readonly machines: readonly Machine[];
  /** What each machine is set up for this morning. */
  readonly setUpNow: readonly {
    readonly machineId: string;
    readonly recipeId: string;
    readonly lengthM: number;
  }[];
  readonly recipes: readonly Recipe[];
  readonly sets: readonly StringSet[];
  /** Instruments and tunings that an orders file may call by name. */
  readonly instruments: readonly Instrument[];
  readonly tunings: readonly { readonly name: string; readonly tuning: Tuning }[];
  readonly bins: readonly Bin[];
  readonly strings: readonly StringStock[];
  readonly rates: CostRates;
  readonly rules: ShopRules;
  /** Left out where no strings were measured yet: the prior predicts. */
  readonly seat?: SeatModel;
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
  /** Length over all of a guitar string for scales up to `standardScaleUpToM`, and of a long one above. */
  readonly standardLengthM: number;
  readonly longLengthM: number;
  readonly standardScaleUpToM: number;
  /** When work begins, minutes after midnight, and on which days of the week (1 Monday). */
  readonly dayStartsAtMinute: number;
  readonly workingDays: readonly number[];
}
