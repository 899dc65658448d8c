import type { Need } from '../../contract/index.js';
import type { ReadTransaction } from '../../store/index.js';

/** What of one kind needs a person at a moment. */
export type NeedsOf = (tx: ReadTransaction, now: string) => Promise<readonly Need[]>;
