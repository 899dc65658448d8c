import type { RecordKind, StoredRecord } from '../../contract/index.js';
import type { ReadTransaction } from '../../store/index.js';
import { csvOf, flatten } from './flat-table.js';

/** All records of a kind, oldest first, as a table of separated values or as JSON. */
export async function exportRecords(
  tx: ReadTransaction,
  kind: RecordKind,
  format: 'csv' | 'json',
): Promise<string> {
  const records: StoredRecord<object>[] = [];
  let after: string | undefined;
  do {
    const page = await tx.records.list(kind, {
      limit: 500,
      order: 'oldest',
      ...(after === undefined ? {} : { after }),
    });
    records.push(...(page.items as readonly StoredRecord<object>[]));
    after = page.next;
  } while (after !== undefined);
  if (format === 'json') return `${JSON.stringify(records, null, 1)}\n`;
  return csvOf(
    records.map(({ id, version, state, createdAt, updatedAt, body }) => ({
      id,
      version: String(version),
      state,
      createdAt,
      updatedAt,
      ...flatten(body),
    })),
  );
}
