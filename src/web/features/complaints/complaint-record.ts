import type { RecordOf } from '../../api/use-records.js';

export type ComplaintRecord = RecordOf<'complaint'>;
