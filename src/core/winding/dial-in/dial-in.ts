import type { DialInAim } from './dial-in-aim.js';
import type { FirstBelief } from './first-belief.js';
import type { Knob } from './knob.js';

/** A dial-in under way: what was known before it, and all that was done and measured since, in order. */
export interface DialIn {
  readonly knob: Knob;
  readonly aim: DialInAim;
  readonly first: FirstBelief;
  readonly steps: readonly DialInStep[];
}

export type DialInStep =
  /** The knob of a position was put to a setting, on advice or against it. */
  | {
      readonly kind: 'set';
      readonly position: number;
      readonly setting: number;
      readonly chosenBy: 'advice' | 'winder';
    }
  /** A string was wound at this position and measured: error at each place, m. */
  | { readonly kind: 'string'; readonly position: number; readonly errorsM: readonly number[] }
  /** The last string of this position was measured once more. */
  | { readonly kind: 'again'; readonly position: number; readonly errorsM: readonly number[] };
