import { fail, type Result, succeed } from '../foundation/index.js';
import type { StringEnd } from '../sets/index.js';
import type { Wire } from '../stock/index.js';
import type { WireUse } from '../winding/index.js';
import { type Costs, NO_COSTS, settle, timesCosts, type UnsettledCosts, unsettledTotal } from './costs.js';
import { handTimeCosts } from './hand-time.js';
import type { CostRates } from './rates.js';

/** A string as cost sees it. `stringWork` gives the first three. */
export interface CostedString {
  readonly wire: readonly WireUse[];
  readonly cycleSeconds: number;
  readonly positions: 1 | 2;
  readonly end: StringEnd;
}

/** What wire costs, and everything else. */
export interface Prices {
  readonly wires: readonly Pick<Wire, 'id' | 'priceMinorPerKg'>[];
  readonly rates: CostRates;
}

export interface CostFault {
  readonly code: 'costing.no-price';
  readonly wireId: string;
}

/**
 * Standard cost of one good string, not rounded, in minor units: its wire by weight (what is cut off
 * included), its end, the minutes of a hand that minds the machine through its share of a cycle, overhead on
 * that, and the run's scrap as a share of all these. What it costs to set the run up comes on top
 * (`changeOverCosts`). Fails where a wire has no price.
 */
export function stringCosts(string: CostedString, prices: Prices): Result<UnsettledCosts, CostFault> {
  const { rates } = prices;
  const priceOf = new Map(prices.wires.map((wire) => [wire.id, wire.priceMinorPerKg]));
  const unpriced = string.wire.find(({ wireId }) => priceOf.get(wireId) === undefined);
  if (unpriced) return fail({ code: 'costing.no-price', wireId: unpriced.wireId });
  const byWire = string.wire.map(({ wireId, kg }) => ({ wireId, minor: kg * priceOf.get(wireId)! }));
  const made: UnsettledCosts = {
    ...NO_COSTS,
    wireMinor: byWire.reduce((sum, { minor }) => sum + minor, 0),
    endsMinor: rates.endMinorEach[string.end],
    ...handTimeCosts(string.cycleSeconds / string.positions / 60, rates),
    byWire,
  };
  return succeed({ ...made, scrapMinor: rates.runScrapShare * unsettledTotal(made) });
}

/**
 * Standard cost of `quantity` good strings in whole minor units. Rounded once for all of them: a string costs
 * a few minor units, and a thousand roundings of one would drift by hundreds.
 */
export function standardCost(string: CostedString, prices: Prices, quantity = 1): Result<Costs, CostFault> {
  const one = stringCosts(string, prices);
  return one.ok ? succeed(settle(timesCosts(one.value, quantity))) : one;
}
