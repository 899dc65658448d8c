import { byText } from '../../foundation/index.js';

export interface ParetoRow {
  readonly reason: string;
  readonly count: number;
  /** Of all, 0 to 1, and with all rows above. */
  readonly share: number;
  readonly cumulative: number;
}

/**
 * Reasons in falling order of how often they came up, with their running share (J. Juran after V. Pareto: a few make up
 * most). Equal counts go by name, so that the order is the same every time.
 */
export function pareto(counts: ReadonlyMap<string, number>): readonly ParetoRow[] {
  const total = [...counts.values()].reduce((sum, count) => sum + count, 0);
  let running = 0;
  return [...counts]
    .sort(([one, often], [other, rare]) => rare - often || byText(one, other))
    .map(([reason, count]) => {
      running += count;
      return { reason, count, share: count / total, cumulative: running / total };
    });
}
