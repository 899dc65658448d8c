import { monotoneInterpolation } from '../../numeric/index.js';
import { APART } from './dial-means.js';
import type { DialValue } from './dial-reading.js';
import type { MeasuredTable } from './measured-table.js';

/** How a dial measured now differs from the table in force. */
export interface TableDrift {
  /** At each number within the table in force: what it gives now, as a share, less what the table says. */
  readonly rows: readonly {
    readonly dial: number;
    readonly before: number;
    readonly share: number;
    /** One standard deviation of `share`. */
    readonly u: number;
    /** Further than the readings of both may be off. */
    readonly isProven: boolean;
  }[];
  /** Mean over the numbers, weighted by how well each is known, with one standard deviation. */
  readonly share: number;
  readonly u: number;
  readonly isProven: boolean;
}

/**
 * Undefined where no number measured lies within the table in force. Of that table nobody knows any more how well it
 * was read: it is taken to be known as well as the new one, so variances count twice.
 */
export function tableDrift(now: MeasuredTable, inForce: readonly DialValue[]): TableDrift | undefined {
  if (inForce.length < 2) return undefined;
  const before = monotoneInterpolation(
    inForce.map(({ dial }) => dial),
    inForce.map(({ value }) => value),
  );
  const rows = now.rows
    .filter(({ dial }) => dial >= before.leastX && dial <= before.mostX)
    .map(({ dial, value, u }) => {
      const was = before(dial);
      const share = value / was - 1;
      const shareU = (Math.SQRT2 * u) / was;
      return { dial, before: was, share, u: shareU, isProven: Math.abs(share) > APART * shareU };
    });
  if (rows.length === 0) return undefined;
  const weights = rows.reduce((sum, { u }) => sum + 1 / u ** 2, 0);
  const share = rows.reduce((sum, row) => sum + row.share / row.u ** 2, 0) / weights;
  const u = 1 / Math.sqrt(weights);
  return { rows, share, u, isProven: Math.abs(share) > APART * u || rows.some((row) => row.isProven) };
}
