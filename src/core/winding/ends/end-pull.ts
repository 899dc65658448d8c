/** One end that was pulled. */
export interface EndPull {
  /** The highest force that it reached. */
  readonly forceN: number;
  readonly came: PullOutcome;
  /** The least at which its wire would break, as it was known on the day. */
  readonly leastBreakingN: number;
}

/** Held and let go; broke at the twist or the ball; broke somewhere along the wire; pulled out of its twist. */
export type PullOutcome = 'held' | 'at-twist' | 'in-length' | 'slipped';

/** Force over the wire's own least breaking force. */
export const shareOf = ({ forceN, leastBreakingN }: EndPull): number => forceN / leastBreakingN;

/** Whether it was the end that gave way. Of the others only that it is stronger is known. */
export const gaveWay = ({ came }: EndPull): boolean => came === 'at-twist' || came === 'slipped';

/** Good, not good, or let go before the proof force, which says neither. */
export function judgePull(pull: EndPull, proofShare: number): 'good' | 'failed' | 'short' {
  // A pull gauge shows whole tenths: what falls short of the proof force by less than this is at it.
  if (shareOf(pull) >= proofShare * (1 - AT_PROOF)) return 'good';
  return pull.came === 'held' ? 'short' : 'failed';
}

const AT_PROOF = 0.005;
