export { DaySchema, ORDER_FAULT_CODES } from './schemas/day.js';
export { ShopSchema } from './schemas/shop.js';
export { type CautionWords, cautionInWords, looseTailInWords } from './words/cautions.js';
export { type FileFault, fileFaultWords } from './words/file-faults.js';
export { lateInWords } from './words/late.js';
export { countInWords, listInWords } from './words/lists.js';
export { type FaultWords, orderFaultLine, orderFaultWords } from './words/order-faults.js';
export { placementInWords } from './words/placement.js';
export { meritInWords, recipeFaultWords } from './words/recipe-faults.js';
export { forceInWords, setPointInWords, speedLimitInWords } from './words/set-points.js';
export { firstOffInWords, whirlInWords } from './words/set-up-checks.js';
export {
  endInWords,
  gaugesInWords,
  materialInWords,
  type StringWords,
  stringKeyInWords,
  wholeStringInWords,
} from './words/strings.js';
export { clockInWords, dateInWords, daysInWords, durationInWords } from './words/times.js';
export { unableInWords } from './words/unable.js';
export { unmadeInWords } from './words/unmade.js';
export { warningInWords } from './words/warnings.js';
