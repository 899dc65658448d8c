import type { DemoPerson } from '../../../demo/index.js';
import type { CalendarDate } from '../../core/foundation/index.js';
import type { Transaction } from '../../store/index.js';
import type { Ask } from '../perform.js';
import type { HistoryBook } from './history-book.js';

/** Something that a person of the history does on a day. */
export interface Act {
  /** Since midnight. */
  readonly minute: number;
  readonly by: DemoPerson;
  readonly work: (shop: InHand) => Promise<void>;
}

/** The shop while somebody acts. */
export interface InHand {
  readonly ask: Ask;
  readonly tx: Transaction;
}

/** A day of the history, and what is known on its morning. */
export interface HistoryDay {
  readonly date: CalendarDate;
  readonly book: HistoryBook;
}
