import type { CostRates } from '../costing/index.js';
import type { Catalogue } from '../orders/index.js';
import type { Bin, Spool, Wire } from '../stock/index.js';
import type { Machine, OwnSpread, PastRun } from '../winding/index.js';

/** Everything the shop owns and has settled that a day's work depends on. */
export interface Shop extends Catalogue {
  readonly name: string;
  /** True for the invented workshop, so that every document can say so. */
  readonly invented: boolean;
  readonly wires: readonly Wire[];
  readonly spools: readonly Spool[];
  readonly machines: readonly Machine[];
  /** What each machine is set up for this morning. */
  readonly setUpNow: readonly SetUpNow[];
  readonly bins: readonly Bin[];
  readonly rates: CostRates;
  /** How far its own strings differ, as its last calibration settled it. */
  readonly spread?: OwnSpread;
  /** What machines were set to in past runs, newest first; set-up advice leans on them. */
  readonly record?: readonly PastRun[];
}

export interface SetUpNow {
  readonly machineId: string;
  readonly recipeId: string;
  readonly lengthM: number;
}
