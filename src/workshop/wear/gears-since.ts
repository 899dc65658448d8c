import type { CalendarDate } from '../../core/foundation/index.js';
import type { ReadTransaction } from '../../store/index.js';

/** When the gears of a machine were last measured anew, where they were: its record then has another dial table. */
export async function gearsSince(tx: ReadTransaction): Promise<ReadonlyMap<string, CalendarDate>> {
  const since = new Map<string, CalendarDate>();
  for (const { id, version } of await tx.records.all('machine')) {
    if (version === 1) continue;
    const versions = await tx.records.versions('machine', id);
    versions.forEach(({ body, updatedAt }, at) => {
      const before = versions[at - 1]?.body;
      if (before && gearsOf(before) !== gearsOf(body)) since.set(id, updatedAt.slice(0, 10) as CalendarDate);
    });
  }
  return since;
}

const gearsOf = (body: object): string => JSON.stringify('dialTable' in body ? body.dialTable : null);
