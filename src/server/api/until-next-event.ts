import type { ReadTransaction } from '../../workshop/index.js';

type Read<Query, Asked, Answer> = (tx: ReadTransaction, query: Query, asked: Asked) => Promise<Answer>;

/**
 * Works an answer out once for all who ask until something changes in the shop: for what takes a second to work out of
 * the records, and would keep every tablet waiting meanwhile. Each query has its own answer; only for what does not
 * depend on who asks.
 */
export function untilNextEvent<Query, Asked, Answer>(
  read: Read<Query, Asked, Answer>,
): Read<Query, Asked, Answer> {
  let kept: { readonly event: number; readonly answers: Map<string, Answer> } | undefined;
  return async (tx, query, asked) => {
    const event = await tx.events.last();
    const name = JSON.stringify(query);
    const answers = kept?.event === event ? kept.answers : new Map<string, Answer>();
    kept = { event, answers };
    const known = answers.get(name);
    if (known !== undefined) return known;
    const answer = await read(tx, query, asked);
    answers.set(name, answer);
    return answer;
  };
}
