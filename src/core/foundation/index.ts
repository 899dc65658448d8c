export { byText } from './by-text.js';
export { addDays, type CalendarDate, calendarDate, daysBetween, weekday } from './calendar-date.js';
export { type Chance, seededChance } from './chance.js';
export { grouped } from './grouped.js';
export { type Lifecycle, lifecycle, type StepRefused, stepsFrom, takeStep } from './lifecycle.js';
export { fail, invariant, type Result, succeed } from './result.js';
