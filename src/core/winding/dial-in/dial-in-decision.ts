import type { Estimate } from '../../numeric/index.js';
import type { Doubt } from './doubtful-string.js';
import type { KnobMove } from './knob.js';

/** What to do at one position now, and why. */
export interface DialInAdvice {
  readonly position: number;
  readonly decision: DialInDecision;
  readonly why: DialInReason;
  readonly odds: DialInOdds;
}

export type DialInDecision =
  /** Put the knob to a setting, and wind the first string. */
  | { readonly kind: 'start'; readonly move: KnobMove }
  /** Leave the knob and let the run go. */
  | { readonly kind: 'run' }
  /** Leave the knob; wind and measure one more string. */
  | { readonly kind: 'measure-one-more' }
  /** Do not wind; measure the same string again. */
  | { readonly kind: 'measure-again' }
  /** Move the knob, then let the run go or wind one more string. */
  /** Wind no more: the knob alone will not mend it. */
  | { readonly kind: 'stop' }
  | { readonly kind: 'adjust'; readonly move: KnobMove; readonly next: 'run' | 'string' };

export type DialInReason =
  | { readonly kind: 'from-past-runs'; readonly same: number; readonly near: number }
  | { readonly kind: 'no-past-runs' }
  /** Sure enough that the run will be good. */
  | { readonly kind: 'sure-enough' }
  /** The error seen is no more than strings of this machine differ by: moving would chase chance. */
  | { readonly kind: 'within-noise'; readonly betweenM: number }
  /** The error is real, and taking it out saves so many strings. */
  | { readonly kind: 'error-seen'; readonly savedStrings: number }
  /** Too little is known yet. */
  | { readonly kind: 'not-sure-yet' }
  | { readonly kind: 'doubtful'; readonly doubt: Doubt }
  /** The knob's next step is more than the error. */
  | { readonly kind: 'finer-than-knob' }
  /** The setting wanted is beyond the end of the knob. */
  | { readonly kind: 'end-of-knob'; readonly wanted: number }
  /** So many strings have not settled it: something changes from string to string. */
  | { readonly kind: 'unsettled'; readonly strings: number };

/** What is believed of the process at the setting advised. */
export interface DialInOdds {
  readonly setting: number;
  readonly error: Estimate;
  readonly response: Estimate;
  /** Chance that the running process meets tolerance and capability. */
  readonly sure: number;
  /** Strings of the run expected to be lost because it is not centred. */
  readonly lostStrings: number;
  /** False where the machine's own spread is too wide for the tolerance, however well it is centred. */
  readonly capable: boolean;
  readonly strings: number;
}
