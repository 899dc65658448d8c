export {
  type Allocation,
  allocate,
  type StringDemand,
  type StringShortage,
  type StringTake,
} from './allocate.js';
export { airByPeriod, type PeriodAir } from './climate/air-by-period.js';
export {
  type CorrosionRisk,
  CRITICAL_HUMIDITY,
  corrosionRisk,
  isWet,
  wetnessOf,
} from './climate/corrosion-risk.js';
export { type Excursion, excursions } from './climate/excursions.js';
export { type ClimateReading, type Span, spokenFor } from './climate/spoken-for.js';
export { thinOut } from './climate/thin-out.js';
export { COMPLAINT_FAULTS, type ComplaintFault, complaintFault } from './complaints/complaint-faults.js';
export {
  complaintRate,
  complaintSources,
  type SourceTable,
  type StringsOut,
  type Traits,
} from './complaints/complaint-sources.js';
export { correctMovement } from './correct-movement.js';
export { DRY_ROOM_PRACTICE, type DryRoomLimits, isDryEnough } from './dry-room.js';
export type { Account, Balance, Entry, Item, Movement, Unit } from './ledger.js';
export {
  isAccount,
  isItem,
  type LedgerFault,
  mainUnit,
  movementFault,
  mustNotGoBelowZero,
} from './ledger-laws.js';
export { netEntries, replay } from './ledger-replay.js';
export type { Consumed, StringOfLot } from './ledger-transfer.js';
export {
  COMPLAINT_LIFE,
  DIAL_ROUND_LIFE,
  LIVES,
  ORDER_LIFE,
  PACK_LIFE,
  PLAN_LIFE,
  RECIPE_LIFE,
  REQUEST_LIFE,
  RUN_LIFE,
  SPOOL_LIFE,
  STRING_LOT_LIFE,
} from './lives.js';
export {
  type PackBook,
  pickString,
  type StringInHand,
  sealPack,
  shipPack,
  unpickString,
  voidPack,
} from './pack-movements.js';
export { pullWire, type SpoolPull, type SpoolTake, type WireNeed } from './pull-wire.js';
export { type ReorderNeed, reorderNeeds } from './reorder-needs.js';
export { reserveWire, type WireReserved } from './reserve-wire.js';
export type { Bin, Spool, StringStock, Wire } from './stock.js';
export {
  countDifference,
  makeStrings,
  moveStrings,
  receivePieces,
  scrapStrings,
} from './string-movements.js';
export { coverDays, WIRE_COVER_PRACTICE_DAYS, type WireUse } from './wire-cover.js';
export { receiveWire, takeWire, weighDifference } from './wire-movements.js';
export { kgFromMg, mFromMm, mgFromKg, mmFromMg, type SpoolBook } from './wire-quantities.js';
