export type { OrderLine, PlayerRequest, ReferenceSet, WantedSet, WantedString, Wishes } from './order.js';
export type {
  OrderFault,
  OrderFaultCode,
  OrderWarning,
  Resolution,
  ResolvedOrder,
  ResolvedString,
} from './resolved.js';
