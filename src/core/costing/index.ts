export type { CostRates } from './rates.js';
