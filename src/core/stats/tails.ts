/** The two shares into which a value cuts a distribution, each exact to its own last digits: they add up to 1. */
export interface Tails {
  readonly below: number;
  readonly above: number;
}
