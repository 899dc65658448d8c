/** The computing core as a library: pure functions over plain data, the same in Node and in the browser. */
export * as costing from './costing/index.js';
export * as day from './day/index.js';
export * as foundation from './foundation/index.js';
export * as materials from './materials/index.js';
export * as numeric from './numeric/index.js';
export * as orders from './orders/index.js';
export * as planning from './planning/index.js';
export * as quality from './quality/index.js';
export * as recipes from './recipes/index.js';
export * as sets from './sets/index.js';
export * as stats from './stats/index.js';
export * as stock from './stock/index.js';
export * as string from './string/index.js';
export * as units from './units/index.js';
export * as winding from './winding/index.js';
