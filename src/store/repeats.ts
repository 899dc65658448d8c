import type { RepeatTable } from './store.js';
import type { Sql } from './tables.js';

/** The answers given, within one transaction. */
export const createRepeats = (trx: Sql): RepeatTable => ({
  find: async (requestId) => {
    const row = await trx
      .selectFrom('repeats')
      .selectAll()
      .where('request_id', '=', requestId)
      .executeTakeFirst();
    return row && { useCase: row.use_case, inputHash: row.input_hash, answer: JSON.parse(row.answer) };
  },
  save: async ({ requestId, useCase, inputHash, answer, at }) => {
    await trx
      .insertInto('repeats')
      .values({
        request_id: requestId,
        use_case: useCase,
        input_hash: inputHash,
        answer: JSON.stringify(answer ?? null),
        at,
      })
      .execute();
  },
});
