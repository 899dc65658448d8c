export { type ReadingOfString, type StringSums, stringSums } from './string-sums.js';
