export { changeOverCosts } from './change-over-costs.js';
export {
  addCosts,
  type CostParts,
  type Costs,
  NO_COSTS,
  settle,
  timesCosts,
  type UnsettledCosts,
  unsettledTotal,
  type WireCost,
} from './costs.js';
export type { CostRates } from './rates.js';
export { packingCosts, type SetCosts, setCosts, standardSetCost } from './set-costs.js';
export { type CostedString, type CostFault, type Prices, standardCost, stringCosts } from './string-costs.js';
