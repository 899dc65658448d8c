import { calendarDate, invariant } from '../src/core/foundation/index.js';

const date = calendarDate('2027-03-01');
invariant(date, 'the demo begins on a day');

/** The Monday on which the invented workshop's month begins. */
export const DEMO_DATE = date;
export {
  PLANTED_CAUSES,
  type PlantedCauses,
} from './history/causes.js';
export { delivery } from './history/deliveries.js';
export { dryRoomClimate } from './history/dry-room.js';
export { endLooksLike, endPulled, PULL_GAUGE } from './history/ends-made.js';
export { checkStrings, countOf, type StringsChecked } from './history/faults-made.js';
export {
  diameterReadingM,
  MEASURED_AT,
  massReadingKg,
  micrometerAt,
  placeM,
  SCALE,
} from './history/gauges.js';
export {
  COMPLAINTS_OF_THE_MORNING,
  DRYER_STOOD_STILL,
  ORDERS_BY_HAND,
  type OrderByHand,
  STANDSTILL,
} from './history/last-day.js';
export { type LetterToCome, letterAbout, letterOfCause } from './history/letters.js';
export { normal } from './history/normal.js';
export { DEMO_PASSWORD, DEMO_PEOPLE, DEMO_PIN, type DemoPerson, WINDER_AT } from './history/people.js';
export { REQUEST_LETTERS, type RequestLetter } from './history/requests.js';
export { seededIds } from './history/seeded-ids.js';
export { type StringTruth, windString } from './history/string-truth.js';
export { workingDays } from './history/working-days.js';
export { demoOrders } from './orders.js';
export { demoWorkshop } from './workshop.js';
