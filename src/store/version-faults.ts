import { sql } from 'kysely';
import { RECORD_KINDS, type RecordKind } from '../contract/index.js';
import { recordTable } from './record-tables.js';
import type { IntegrityFault } from './store.js';
import type { Sql } from './tables.js';

/** Records of which a former version is missing: one at version 5 must have four behind it, numbered 1 to 4. */
export async function versionFaults(trx: Sql): Promise<readonly IntegrityFault[]> {
  const faults: IntegrityFault[] = [];
  for (const kind of Object.keys(RECORD_KINDS) as RecordKind[]) {
    const { rows } = await sql<{ id: string; version: number; kept: number }>`
      select present.id, present.version, count(former.version) as kept
      from ${sql.table(recordTable(kind).table)} as present
      left join record_versions as former on former.kind = ${kind} and former.record_id = present.id
        and former.version < present.version
      where present.version > 1
      group by present.id, present.version
      having count(former.version) <> present.version - 1
      order by present.id`.execute(trx);
    for (const { id, version, kept } of rows)
      faults.push({
        check: 'versions',
        detail: `${kind} ${id} is at version ${version}, but ${kept} versions before it are kept`,
      });
  }
  return faults;
}
