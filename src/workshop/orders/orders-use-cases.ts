import type { AnyUseCase } from '../use-case.js';
import { cancelOrder } from './cancel-order.js';
import {
  answerComplaint,
  closeComplaint,
  correctComplaint,
  registerComplaint,
  reopenComplaint,
} from './complaints.js';
import { declineRequest } from './decline-request.js';
import { freezePlan } from './freeze-plan.js';
import { importOrders } from './import-orders.js';
import { orderRequest } from './order-request.js';
import { rearrangePlan } from './rearrange-plan.js';
import { receiveRequest } from './receive-request.js';
import { resolveRequest } from './resolve-request.js';
import { saveOrder } from './save-order.js';

/** From a letter to the plan, and from the player back again. */
export const ORDERS_USE_CASES: readonly AnyUseCase[] = [
  receiveRequest,
  resolveRequest,
  orderRequest,
  declineRequest,
  saveOrder,
  cancelOrder,
  importOrders,
  freezePlan,
  rearrangePlan,
  registerComplaint,
  correctComplaint,
  answerComplaint,
  closeComplaint,
  reopenComplaint,
];
