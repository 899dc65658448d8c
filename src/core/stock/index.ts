export type { Bin, Spool, StringStock, Wire } from './stock.js';
