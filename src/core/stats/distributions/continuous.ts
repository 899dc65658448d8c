/** A distribution on a line: shares beyond a value, and values that cut off a share. */
export interface Continuous {
  /** Share below x. */
  below(x: number): number;
  /** Share above x: small ones keep their digits, as 1 - below would not. */
  above(x: number): number;
  /** Value below which this share lies, 0 < share < 1. */
  quantile(share: number): number;
  /** Value above which this share lies, 0 < share < 1. */
  quantileAbove(share: number): number;
}
