export type { Instrument, Tuning } from './instrument.js';
export { type StringEnd, type StringSet, type StringSpec, stringKey } from './string-set.js';
