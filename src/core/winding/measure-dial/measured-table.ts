import { dialFit } from '../wear/index.js';
import { APART, type DialMean, dialMeans } from './dial-means.js';
import type { DialReading, DialValue } from './dial-reading.js';

/** What a dial gives, as measured: a table that keeps one direction, and how every number stands to it. */
export interface MeasuredTable {
  readonly direction: 'rising' | 'falling';
  readonly rows: readonly (DialMean & {
    /** By the nearest table that keeps one direction (isotonic least squares). */
    readonly fitted: number;
    /** Measured less fitted. */
    readonly off: number;
  })[];
  /** Numbers that go against the direction of the others by more than their readings may be off. */
  readonly against: readonly number[];
  /** To set by: no two numbers give the same. Neighbours that could not be told apart are one row, that in their middle. */
  readonly table: readonly DialValue[];
  /** One standard deviation of one reading, as a share of what it reads. */
  readonly spreadShare: number;
}

/**
 * The table that readings of a dial give, repeats averaged and strays set aside. Undefined with fewer than two numbers.
 * The fit is `dialFit`, each mean weighted by its readings.
 */
export function measuredTable(readings: readonly DialReading[]): MeasuredTable | undefined {
  const { means, spreadShare } = dialMeans(readings);
  const fit = dialFit(
    means.flatMap(({ dial, value, count }) =>
      Array.from({ length: count }, () => ({ dial, traversePerTurnM: value })),
    ),
  );
  if (!fit) return undefined;
  const rows = means.map((mean, at) => {
    const fitted = fit.rows[at]!.traversePerTurnM;
    return { ...mean, fitted, off: mean.value - fitted };
  });
  return {
    direction: fit.direction,
    rows,
    against: rows.filter(({ off, u }) => Math.abs(off) > APART * u).map(({ dial }) => dial),
    table: withoutTies(rows.map(({ dial, fitted }) => ({ dial, value: fitted }))),
    spreadShare,
  };
}

/** Of neighbours that were pooled to one value the middle one stays. */
function withoutTies(rows: readonly DialValue[]): readonly DialValue[] {
  const pools: DialValue[][] = [];
  for (const row of rows) {
    const pool = pools.at(-1);
    if (pool?.[0]?.value === row.value) pool.push(row);
    else pools.push([row]);
  }
  return pools.map((pool) => pool[Math.floor((pool.length - 1) / 2)]!);
}
