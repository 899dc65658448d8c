import type { StringEnd } from '../../sets/index.js';

/**
 * What a shop settles for itself about the ends of its strings. Workshop values, common practice, no source:
 * plain round figures, to be replaced by what the shop's own pull tests show.
 */
export interface EndPractice {
  /** Length of the neck, all turns of the twist together. */
  readonly neckM: number;
  /** No more turns than this, however thin the wire: each is bent once more. */
  readonly mostTwists: number;
  /** Share of the pull that friction may leave at the tail: what the fewest turns follow from. */
  readonly pullLeftShare: number;
  readonly twistsEitherWay: number;
  /** Across the groove of the ball, or across the eye of the loop. */
  readonly eyeM: Readonly<Record<StringEnd, number>>;
  /** The tail left behind the last turn: what to cut to, and what may stand at most. */
  readonly tailM: number;
  readonly mostTailM: number;
  readonly lengthEitherWayM: number;
}

export const STARTING_END_PRACTICE: EndPractice = {
  neckM: 0.003,
  mostTwists: 9,
  pullLeftShare: 0.01,
  twistsEitherWay: 1,
  eyeM: { ball: 0.0025, loop: 0.005 },
  tailM: 0.0005,
  mostTailM: 0.0015,
  lengthEitherWayM: 0.003,
};
