import { ACCESS_FAULTS } from './access-faults.js';
import { CALIBRATION_FAULTS } from './calibration-faults.js';
import { DIAL_ROUND_FAULTS } from './dial-round-faults.js';
import { DRY_ROOM_FAULTS } from './dry-room-faults.js';
import { ORDER_DESK_FAULTS } from './order-desk-faults.js';
import type { FaultWords } from './order-faults.js';
import { PACKING_FAULTS } from './packing-faults.js';
import { PRODUCTION_FAULTS } from './production-faults.js';
import { SHOP_RECORD_FAULTS } from './shop-record-faults.js';
import { type FactsOf, SHOP_WIDE_FAULTS, type WordsOfFault } from './shop-wide-faults.js';
import { STOCK_FAULTS } from './stock-faults.js';

/** Words for every code with which a use case refuses. One page of the handbook lists the same codes. */
export const WORKSHOP_FAULTS: Readonly<Record<string, WordsOfFault>> = {
  ...SHOP_WIDE_FAULTS,
  ...ACCESS_FAULTS,
  ...STOCK_FAULTS,
  ...PRODUCTION_FAULTS,
  ...SHOP_RECORD_FAULTS,
  ...ORDER_DESK_FAULTS,
  ...PACKING_FAULTS,
  ...CALIBRATION_FAULTS,
  ...DIAL_ROUND_FAULTS,
  ...DRY_ROOM_FAULTS,
};

/** Says why the shop refuses and what to do about it. */
export function workshopFaultWords(fault: FactsOf): FaultWords {
  const words = WORKSHOP_FAULTS[fault.code];
  if (!words) return { what: `The shop refuses (${fault.code}).`, mend: 'Ask who looks after the program.' };
  return typeof words === 'function' ? words(fault) : words;
}
