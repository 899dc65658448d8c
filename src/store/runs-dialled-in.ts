import { sql } from 'kysely';
import type { ReadingReader } from './store.js';
import type { Sql } from './tables.js';
import { isNotVoided } from './voided-entries.js';

/** Found by the strings, of which few have a setting, not by the many runs. */
export async function runsDialledIn(
  trx: Sql,
  { machineId, isElsewhere, limit }: Parameters<ReadingReader['runsDialledIn']>[0],
): Promise<readonly string[]> {
  const onMachine = isElsewhere ? sql`r.machine_id <> ${machineId}` : sql`r.machine_id = ${machineId}`;
  const { rows } = await sql<{ readonly run_id: string }>`
    select t.run_id
    from trial_strings t
    join runs r on r.id = t.run_id
    where t.setting is not null and ${isNotVoided(sql.ref('t.id'))} and ${onMachine}
    group by t.run_id
    order by max(t.at) desc, t.run_id
    limit ${limit}`.execute(trx);
  return rows.map(({ run_id }) => run_id);
}
