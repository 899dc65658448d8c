import { NO_COSTS, type UnsettledCosts, unsettledTotal } from './costs.js';
import { handTimeCosts } from './hand-time.js';
import type { CostRates } from './rates.js';

/**
 * What it costs to change a machine over to a run, not rounded: the minutes of a hand with overhead, and the
 * strings lost while it is dialled in, each at what making it costs (`string` is the standard cost of one of
 * the run's strings; its own share of the run's scrap is left out).
 */
export const changeOverCosts = (
  change: { readonly minutes: number; readonly scrapStrings: number },
  string: UnsettledCosts,
  rates: CostRates,
): UnsettledCosts => ({
  ...NO_COSTS,
  ...handTimeCosts(change.minutes, rates),
  scrapMinor: change.scrapStrings * unsettledTotal({ ...string, scrapMinor: 0 }),
});
