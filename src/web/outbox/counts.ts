import type { ToTakeBack } from './take-back.js';

/** A count of the floor, with the shop or on its way there. */
export interface Counted {
  readonly id: string;
  readonly station: string;
  readonly at: string;
  readonly by: string;
}

/** The counts of a run or a lot, the oldest first, and how one of a station is called and taken back. */
export interface TakesCountsBack<Tally extends Counted> {
  readonly tallies: readonly Tally[];
  readonly station: 'winder' | 'coiler';
  readonly asEntry: (tally: Tally) => ToTakeBack;
}

export const countsAt = <Tally extends Counted>(
  tallies: readonly Tally[],
  station: TakesCountsBack<Tally>['station'],
): readonly Tally[] => tallies.filter((tally) => tally.station === station);
