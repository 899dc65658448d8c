/**
 * What a departure costs. Pull, bend and step count squares of natural logarithms: 1 % off one pull is 1e-4,
 * 5 % is 2.5e-3. The others count that much for every string concerned.
 */
export interface SetWeights {
  /** (ln T - ln T*)², times the position's own weight. */
  readonly pull: number;
  /** Squared log of bend force against the one wished; between neighbours where neither has a wish. */
  readonly bend: number;
  /** (ln T - ln T of the next - step wished)². */
  readonly step: number;
  /** The string is not on the shelf, or not often enough. */
  readonly notOnShelf: number;
  /** Its recipe is not in the shop's book. */
  readonly newRecipe: number;
  /** A wire that the shop does not stock. */
  readonly extraWire: number;
}

/**
 * Where nothing else is wished. Our own choice, no source: winding a string rather than taking it from the
 * shelf is worth 1 % of pull, a new recipe 2 %, a new wire on the shelf 4 %; an uneven step counts a quarter
 * of a wrong pull.
 */
export const USUAL_WEIGHTS: SetWeights = {
  pull: 1,
  bend: 0,
  step: 0.25,
  notOnShelf: 1e-4,
  newRecipe: 4e-4,
  extraWire: 1.6e-3,
};
