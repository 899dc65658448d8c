import { shareMinor } from '../units/index.js';
import {
  addCosts,
  type Costs,
  NO_COSTS,
  settle,
  timesCosts,
  type UnsettledCosts,
  unsettledTotal,
} from './costs.js';
import { handTimeCosts } from './hand-time.js';
import type { CostRates } from './rates.js';

/** Cost of sets of one kind, twice: by part, and by string and packing. Each sums to the same total. */
export interface SetCosts extends Costs {
  /** In the order of the set's strings. */
  readonly byStringMinor: readonly number[];
  /** Pack, and the hand that packs. */
  readonly packingMinor: number;
}

/** One set, not rounded: its strings, its pack, and the minutes of a hand that packs it. */
export const setCosts = (strings: readonly UnsettledCosts[], rates: CostRates): UnsettledCosts =>
  addCosts([...strings, packingCosts(rates)]);

/** Packing of one set, not rounded. */
export const packingCosts = (rates: CostRates): UnsettledCosts => ({
  ...NO_COSTS,
  packMinor: rates.packMinorPerSet,
  ...handTimeCosts(rates.packMinutesPerSet, rates),
});

/** Standard cost of `quantity` sets in whole minor units, rounded once; see `settle` for the rule. */
export function standardSetCost(
  strings: readonly UnsettledCosts[],
  rates: CostRates,
  quantity = 1,
): SetCosts {
  const settled = settle(timesCosts(setCosts(strings, rates), quantity));
  const shares = shareMinor(settled.totalMinor, [...strings, packingCosts(rates)].map(unsettledTotal));
  return {
    ...settled,
    byStringMinor: shares.slice(0, strings.length),
    packingMinor: shares[strings.length]!,
  };
}
