export { openStore, type StoreOptions, type StorePlace } from './open-store.js';
export type * from './store.js';
export { Overdrawn, StaleVersion, StoreUnavailable, Taken, UnreadableCursor } from './store-faults.js';
