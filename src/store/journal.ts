import { askAgain, askInPieces } from './ask-again.js';
import { behind, inOrder, pageOf, rowsToFetch, type Walk } from './cursor.js';
import type { JournalEntry, JournalReader, JournalWriter } from './store.js';
import type { JournalRow, JournalTouchedRow, Sql } from './tables.js';

/** The journal within one transaction: entries are added, and the database itself refuses to change one. */
export function createJournal(trx: Sql): JournalWriter {
  return {
    list: (query) => list(trx, query),
    append: async ({ id, at, by, useCase, input, touched }) => {
      const entry: JournalRow = {
        id,
        at,
        by,
        use_case: useCase,
        input: JSON.stringify(input ?? null),
        touched: JSON.stringify(touched),
      };
      await askAgain(trx, 'append to journal', [entry], (marks) => trx.insertInto('journal').values(marks));
      const records = [...new Set(touched.map((record) => record.id))];
      await askInPieces(
        trx,
        'append to journal_touched',
        records.map((record_id): JournalTouchedRow => ({ record_id, at, journal_id: id })),
        (marks) => trx.insertInto('journal_touched').values(marks),
      );
    },
  };
}

async function list(
  trx: Sql,
  { recordId, by, after, limit, order = 'newest' }: Parameters<JournalReader['list']>[0],
) {
  const whole = trx.selectFrom('journal').select(['id', 'at', 'by', 'use_case', 'input', 'touched']);
  if (recordId === undefined) {
    const walk: Walk = { by: ['at', 'id'], order, after, limit };
    const rows = await whole
      .$if(by !== undefined, (query) => query.where('by', '=', by!))
      .where(behind(walk))
      .orderBy(inOrder(walk))
      .limit(rowsToFetch(walk))
      .execute();
    return pageOf(rows, walk, asEntry);
  }
  const walk: Walk = { by: ['journal_touched.at', 'journal_touched.journal_id'], order, after, limit };
  const rows = await trx
    .selectFrom('journal_touched')
    .innerJoin('journal', 'journal.id', 'journal_touched.journal_id')
    .select([
      'journal.id',
      'journal.at',
      'journal.by',
      'journal.use_case',
      'journal.input',
      'journal.touched',
      'journal_touched.at as journal_touched.at',
      'journal_touched.journal_id as journal_touched.journal_id',
    ])
    .where('journal_touched.record_id', '=', recordId)
    .$if(by !== undefined, (query) => query.where('journal.by', '=', by!))
    .where(behind(walk))
    .orderBy(inOrder(walk))
    .limit(rowsToFetch(walk))
    .execute();
  return pageOf(rows, walk, asEntry);
}

const asEntry = (row: JournalRow): JournalEntry => ({
  id: row.id,
  at: row.at,
  by: row.by,
  useCase: row.use_case,
  input: JSON.parse(row.input),
  touched: JSON.parse(row.touched),
});
