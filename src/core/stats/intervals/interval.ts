/** Between what a quantity lies with the confidence asked for. */
export interface Interval {
  readonly from: number;
  readonly to: number;
}
