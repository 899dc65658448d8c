import {
  addCosts,
  changeOverCosts,
  NO_COSTS,
  packingCosts,
  settle,
  standardSetCost,
  stringCosts,
  timesCosts,
  type UnsettledCosts,
} from '../costing/index.js';
import { invariant } from '../foundation/index.js';
import type { ResolvedOrder } from '../orders/index.js';
import type { DayCosts, DayRun, PackingRoll } from './day.js';
import type { AbleMachine, Make, MakeOf } from './make.js';
import type { Shop } from './shop.js';

/** Standard costs of the shop's strings, worked out once a kind. */
export type CostOf = (stringKey: string) => UnsettledCosts;

/** Looks up what one good string of a kind costs on the machine that makes it quickest. */
export function costLookUp(shop: Shop, makeOf: MakeOf): CostOf {
  const known = new Map<string, UnsettledCosts>();
  return (key) => {
    const before = known.get(key);
    if (before) return before;
    const cost = stringCost(shop, makeOf(key));
    known.set(key, cost);
    return cost;
  };
}

/** A kind that no machine of today can make, yet lies on the shelf, is costed at its wire and end alone. */
function stringCost(shop: Shop, make: Make): UnsettledCosts {
  const quickest = make.able.reduce<AbleMachine | undefined>(
    (best, each) => (best && secondsAString(best) <= secondsAString(each) ? best : each),
    undefined,
  );
  const work = quickest ? quickest.work : { cycleSeconds: 0, positions: 1 as const };
  const cost = stringCosts(
    { ...work, wire: make.wire, end: make.spec.end },
    { wires: shop.wires, rates: shop.rates },
  );
  invariant(cost.ok, 'every wire of a recipe is in the shop and has a price');
  return cost.value;
}

const secondsAString = ({ work }: AbleMachine): number => work.cycleSeconds / work.positions;

/** What the sets of an order cost by standard, packing included. Minor units. */
export const orderCostMinor = (shop: Shop, order: ResolvedOrder, costOf: CostOf): number =>
  standardSetCost(
    order.strings.map(({ stringKey }) => costOf(stringKey)),
    shop.rates,
    order.quantity,
  ).totalMinor;

/** What the day costs: its runs with their set-ups, and the packing of its roll. Parts sum to the total. */
export function dayCosts(shop: Shop, runs: readonly DayRun[], roll: PackingRoll, costOf: CostOf): DayCosts {
  const made = runs.flatMap((run) => {
    const string = costOf(run.stringKey);
    const change = { minutes: run.setUpMinutes, scrapStrings: run.scrapStrings };
    return [timesCosts(string, run.quantity), changeOverCosts(change, string, shop.rates)];
  });
  const sets = roll.sets.reduce((sum, { quantity }) => sum + quantity, 0);
  const { byWire: _, ...costs } = settle(
    addCosts([NO_COSTS, ...made, timesCosts(packingCosts(shop.rates), sets)]),
  );
  return costs;
}
