import type { ReadTransaction } from '../../workshop/index.js';

type Read<Query, Asked, Answer> = (tx: ReadTransaction, query: Query, asked: Asked) => Promise<Answer>;

/**
 * Works an answer out once for all who ask until something changes in the shop: for what takes a second to work out of
 * the records, and would keep every tablet waiting meanwhile. Only for what neither depends on the query nor on who asks.
 */
export function untilNextEvent<Query, Asked, Answer>(
  read: Read<Query, Asked, Answer>,
): Read<Query, Asked, Answer> {
  let kept: { readonly event: number; readonly answer: Answer } | undefined;
  return async (tx, query, asked) => {
    const event = await tx.events.last();
    if (kept?.event === event) return kept.answer;
    const answer = await read(tx, query, asked);
    kept = { event, answer };
    return answer;
  };
}
