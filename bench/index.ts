// What tests hold the benchmarks' own reckoning by.
export { compareRules } from './dial-in/compare.js';
export { inHindsight } from './dial-in/equal-quality.js';
