import type { RecordOf } from '../../api/use-records.js';

/** A lot of strings as the shop keeps it. */
export type LotRecord = RecordOf<'string-lot'>;
