import { type EndPractice, STARTING_END_PRACTICE } from './end-practice.js';
import { turnsToLeave } from './tail-friction.js';

/** Full turns of the twist, and what decides them. */
export interface TwistsWanted {
  readonly wanted: number;
  readonly least: number;
  readonly most: number;
  /** The neck filled with touching turns; fewer would slip by friction alone; or no more bends than that. */
  readonly decidedBy: 'neck' | 'friction' | 'most-bends';
}

/**
 * Turns of the twist by the wire's size: as many touching turns as fill the neck, at least so many that
 * friction leaves next to nothing of the pull at the tail, and not more than a wire is bent for. Our own rule:
 * common practice, no source; a shop's own pull tests stand above it.
 */
export function twistsWanted(sizeM: number, practice: EndPractice = STARTING_END_PRACTICE): TwistsWanted {
  const fewest = turnsToLeave(practice.pullLeftShare);
  const filling = Math.round(practice.neckM / sizeM);
  const wanted = Math.max(fewest, Math.min(practice.mostTwists, filling));
  const decidedBy = filling > practice.mostTwists ? 'most-bends' : filling < fewest ? 'friction' : 'neck';
  return {
    wanted,
    least: Math.max(fewest, wanted - practice.twistsEitherWay),
    most: wanted + practice.twistsEitherWay,
    decidedBy,
  };
}
