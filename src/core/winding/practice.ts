import type { StringEnd } from '../sets/index.js';

/**
 * The lengths and margins that a shop settles for itself at the machine. No source gives them: the
 * starting values are plain round figures, to be replaced by what the shop measures.
 */
export interface WindingPractice {
  /** Core taken up by the loop round the ball or of the loop end, and by its twist. */
  readonly twistTakesM: Readonly<Record<StringEnd, number>>;
  /** Core held in the tail's clamp and cut off afterwards; of a plain string, what the cut itself may waste. */
  readonly coreTailM: number;
  /** Core left bare next to the end, and at the tail. */
  readonly bareAtEndM: number;
  readonly bareAtTailM: number;
  /** Wrap wire that is held or wasted before the first turn and after the last, per layer. */
  readonly wrapStartTailM: number;
  readonly wrapFinishTailM: number;
  /** Distance between spindle and whirl speed that is kept free, as a share of the whirl speed. */
  readonly whirlKeepOutShare: number;
  /** Spindle speeds are given in whole multiples of this. */
  readonly spindleStepRpm: number;
  /** First and last place on the wound length where a first-off string is measured, from its ends. */
  readonly measureFromEndsM: number;
}

/** Workshop values, no source. */
export const STARTING_PRACTICE: WindingPractice = {
  twistTakesM: { ball: 0.05, loop: 0.06 },
  coreTailM: 0.05,
  bareAtEndM: 0,
  bareAtTailM: 0.03,
  wrapStartTailM: 0.1,
  wrapFinishTailM: 0.1,
  whirlKeepOutShare: 0.2,
  spindleStepRpm: 10,
  measureFromEndsM: 0.05,
};
