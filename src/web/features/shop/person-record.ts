import type { RecordOf } from '../../api/use-records.js';

/** A person as the shop keeps them. */
export type PersonRecord = RecordOf<'person'>;
