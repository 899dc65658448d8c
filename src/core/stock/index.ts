export {
  type Allocation,
  allocate,
  type StringDemand,
  type StringShortage,
  type StringTake,
} from './allocate.js';
export { pullWire, type SpoolPull, type SpoolTake, type WireNeed } from './pull-wire.js';
export { type ReorderNeed, reorderNeeds } from './reorder-needs.js';
export type { Bin, Spool, StringStock, Wire } from './stock.js';
