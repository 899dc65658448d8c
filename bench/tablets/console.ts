import { PERMISSIONS } from '../../src/contract/index.js';
import { computerClock, newId, type Performer } from '../../src/workshop/index.js';

/** Whoever sits at the server itself: may do everything. */
export const CONSOLE: Performer = {
  actor: { by: 'console', permissions: new Set(PERMISSIONS) },
  clock: computerClock,
  newId,
};
