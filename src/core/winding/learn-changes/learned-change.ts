import type { ChangeKind } from './change-kind.js';

/** What a shop's own set-ups of one kind on one machine make of the machine's figures. */
export interface LearnedChange {
  /** Set-ups that it is learned from. */
  readonly setUps: number;
  /** Scrap to expect, as a multiple of the machine's figure (or of `LEAST_FIGURE`, where that is less). */
  readonly scrapTimes: number;
  /** Minutes to expect, likewise; left out where too few set-ups tell how long they took. */
  readonly minutesTimes?: number;
}

export type LearnedChanges = Readonly<Partial<Record<ChangeKind, LearnedChange>>>;

/** A figure of nothing would say that no shop ever loses a string: it counts as half a string in learning. A choice of ours. */
export const LEAST_FIGURE = 0.5;
