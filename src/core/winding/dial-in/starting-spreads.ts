/** How much of what a process does is shared with others, as standard deviations. */
export interface KinSpreads {
  /** Shared by all runs of the family, whatever the machine. */
  readonly family: number;
  /** Shared by all runs of the machine, and by those of one of its positions. */
  readonly machine: number;
  readonly position: number;
  /** Shared by the positions in one run: its lots of wire. */
  readonly run: number;
  /** Of this position in this run alone: its spool, its threading. */
  readonly own: number;
}

/**
 * What is believed before anything was measured: round workshop figures, no source. They are where learning
 * begins; the record soon outweighs them.
 */
export const STARTING_SPREADS: {
  /** As shares of the tolerance. */
  readonly offset: KinSpreads;
  /** As shares of the reckoned response. */
  readonly response: KinSpreads;
  /** Of strings and readings, as shares of the tolerance. */
  readonly between: number;
  readonly within: number;
  readonly micrometer: number;
  readonly wander: number;
  /** By eye, as a share of the tolerance: how far off a setting is that a winder chooses against the advice. */
  readonly override: number;
} = {
  offset: { family: 0.7, machine: 0.5, position: 0.25, run: 0.35, own: 0.15 },
  response: { family: 0.1, machine: 0.2, position: 0.07, run: 0.08, own: 0.04 },
  between: 0.25,
  within: 0.12,
  micrometer: 0.08,
  wander: 0.02,
  override: 0.8,
};
