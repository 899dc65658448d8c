/** The first string of a run, wound by the sheet before anybody turned anything, against what was expected of it. */
export interface FirstString {
  readonly machineId: string;
  /** What it was measured with. */
  readonly instrument: string;
  /** Days since any fixed day. */
  readonly day: number;
  /** Measured less expected diameter, m. */
  readonly offM: number;
  /** How much it counts: 1 as others, less where it lies far off for reasons of its own. */
  readonly weight: number;
}

/** With the month that it fell in, counted from the first. */
export interface DatedString extends FirstString {
  readonly month: number;
}
