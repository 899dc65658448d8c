import { askInPieces } from './ask-again.js';
import type { EventWriter, StoredEvent } from './store.js';
import type { EventRow, Sql } from './tables.js';

/**
 * The events within one transaction. Writers queue up to their commit, so the next number is one more than the last,
 * and whoever has read up to a number will never find a lower one afterwards. Nobody else writes any before the
 * transaction ends: the newest one is read once, however often it is asked for.
 */
export function createEvents(trx: Sql): EventWriter {
  let known: StoredEvent | undefined;
  const newest = async () => {
    known ??= await newestOf(trx);
    return known;
  };
  const last = async () => (await newest())?.number ?? 0;
  return {
    last,
    newest,
    since: async (number, limit) => {
      const rows = await trx
        .selectFrom('events')
        .selectAll()
        .where('number', '>', number)
        .orderBy('number')
        .limit(limit)
        .execute();
      return rows.map(asEvent);
    },
    append: async (events) => {
      if (events.length === 0) return;
      const before = await last();
      const numbered = events.map((event, index) => ({ ...event, number: before + 1 + index }));
      await askInPieces(trx, 'append to events', numbered.map(asRow), (marks) =>
        trx.insertInto('events').values(marks),
      );
      known = numbered.at(-1);
    },
  };
}

async function newestOf(trx: Sql): Promise<StoredEvent | undefined> {
  const row = await trx
    .selectFrom('events')
    .selectAll()
    .orderBy('number', 'desc')
    .limit(1)
    .executeTakeFirst();
  return row && asEvent(row);
}

const asRow = ({ number, topic, recordId, version, useCase, at }: StoredEvent): EventRow => ({
  number,
  topic,
  record_id: recordId,
  version,
  use_case: useCase,
  at,
});

const asEvent = (row: EventRow): StoredEvent => ({
  number: row.number,
  topic: row.topic,
  recordId: row.record_id,
  version: row.version,
  useCase: row.use_case,
  at: row.at,
});
