import { ACCESS_USE_CASES } from './access/access-use-cases.js';
import { CALIBRATION_USE_CASES } from './calibration/calibration-use-cases.js';
import { DIAL_ROUND_USE_CASES } from './dial-rounds/dial-round-use-cases.js';
import { DRY_ROOM_USE_CASES } from './dry-room/dry-room-use-cases.js';
import { ORDERS_USE_CASES } from './orders/orders-use-cases.js';
import { PACKING_USE_CASES } from './packing/packing-use-cases.js';
import { PRODUCTION_USE_CASES } from './production/production-use-cases.js';
import { SHOP_USE_CASES } from './shop/shop-use-cases.js';
import { STOCK_USE_CASES } from './stock/stock-use-cases.js';
import type { AnyUseCase } from './use-case.js';

/** Everything that can be asked of the shop. The server makes a route of each, the handbook a line. */
export const USE_CASES: readonly AnyUseCase[] = [
  ...STOCK_USE_CASES,
  ...DRY_ROOM_USE_CASES,
  ...PRODUCTION_USE_CASES,
  ...ORDERS_USE_CASES,
  ...PACKING_USE_CASES,
  ...SHOP_USE_CASES,
  ...CALIBRATION_USE_CASES,
  ...DIAL_ROUND_USE_CASES,
  ...ACCESS_USE_CASES,
];

/** The use case of this name. */
export const useCaseNamed = (name: string): AnyUseCase | undefined =>
  USE_CASES.find(({ definition }) => definition.name === name);
