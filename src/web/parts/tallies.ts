import type { InputNamed } from '../../contract/index.js';

/** Strings counted at a station. */
export type Tally = Pick<InputNamed<'record-tally'>, 'id' | 'station' | 'outcome' | 'reason' | 'count'>;

export interface Reason {
  readonly reason: string;
  readonly count: number;
}

/** What the server has and what waits here, each once. */
export function eachOnce<Row extends { readonly id: string }>(
  known: readonly Row[],
  coming: readonly Row[],
): readonly Row[] {
  const ids = new Set(known.map(({ id }) => id));
  return [...known, ...coming.filter(({ id }) => !ids.has(id))];
}

export function byReason(rows: readonly Reason[]): readonly Reason[] {
  const sums = new Map<string, number>();
  for (const { reason, count } of rows) sums.set(reason, (sums.get(reason) ?? 0) + count);
  return [...sums].map(([reason, count]) => ({ reason, count }));
}
