import type { Store } from '../../store/index.js';
import type { Clock } from '../clock.js';
import type { SlowHash } from './slow-hash.js';

/** What the way in works with. */
export interface AccessParts {
  readonly store: Store;
  readonly clock: Clock;
  readonly newId: () => string;
  readonly slowHash: SlowHash;
}
