import type { StorePlace } from '../store/index.js';

/** Where a shop's records lie by what was typed: a `postgres://` address, or the path of a file. */
export const storePlace = (typed: string): StorePlace =>
  /^postgres(?:ql)?:\/\//.test(typed) ? { url: typed } : { file: typed };
