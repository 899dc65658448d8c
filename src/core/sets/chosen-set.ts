import type { StringCandidate } from './string-candidate.js';

/** A string in its place. */
export interface ChosenString {
  /** 1 is the treble. */
  readonly position: number;
  readonly candidate: StringCandidate;
  readonly tensionN: number;
  readonly wishedTensionN: number;
  /** Pull over breaking load of the core; undefined where that is not known. */
  readonly stressShare: number | undefined;
  /** To bend a whole tone at the 12th fret; undefined where no hand reaches. */
  readonly bendForceN: number | undefined;
  readonly wishedBendForceN?: number;
}

/** In what a set can be better or worse than another; smaller is better in each. */
export type SetMeasure =
  /** Largest departure of a pull from the one wished, as a share. */
  | 'pull'
  /** Largest departure of a step of pull between neighbours, as a natural logarithm. */
  | 'step'
  /** Largest departure of a bend force from the one wished, as a share. */
  | 'bend'
  /** Highest stress over strength. */
  | 'strength'
  /** Strings that must be wound. */
  | 'to-wind'
  /** Recipes that the book does not have. */
  | 'new-recipes'
  /** Wires that the shop does not stock. */
  | 'extra-wires';

/** What one set gives up against the best of those shown. */
export interface GivenUp {
  readonly in: SetMeasure;
  readonly value: number;
  readonly bestOfShown: number;
  /** Where it is largest; left out of counts. */
  readonly position?: number;
}

/** Where a set differs from the one shown first. */
export interface SetDifference {
  readonly position: number;
  readonly first: Pick<StringCandidate, 'gaugeThou' | 'kind' | 'material'>;
  readonly here: Pick<StringCandidate, 'gaugeThou' | 'kind' | 'material'>;
  readonly tensionChangeN: number;
}

export interface ChosenSet {
  /** Treble first. */
  readonly strings: readonly ChosenString[];
  /** What the set was ranked by; see `SetWeights`. */
  readonly cost: number;
  readonly totalTensionN: number;
  readonly bestAt: readonly SetMeasure[];
  readonly givesUp: readonly GivenUp[];
  /** Empty for the first. */
  readonly differences: readonly SetDifference[];
}
