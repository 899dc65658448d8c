import type { RecordOf } from '../../api/use-records.js';

/** A run as the shop keeps it. */
export type RunRecord = RecordOf<'run'>;
