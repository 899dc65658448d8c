import { calendarDate, invariant } from '../src/core/foundation/index.js';

const date = calendarDate('2027-03-01');
invariant(date, 'the demo begins on a day');

/** The Monday on which the invented workshop's month begins. */
export const DEMO_DATE = date;
export { demoOrders } from './orders.js';
export { demoWorkshop } from './workshop.js';
