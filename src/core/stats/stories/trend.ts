import { median } from '../../numeric/index.js';
import { normalAbove } from '../distributions/normal.js';

/** A value at a time, in whatever units. */
export interface TimedValue {
  readonly time: number;
  readonly value: number;
}

/** Whether values rise or fall with time, without regard to how they scatter. */
export interface TrendTest {
  /** Pairs that rise less pairs that fall. */
  readonly s: number;
  /** s over its standard deviation if there is no trend, ties counted. */
  readonly z: number;
  /** Chance of as much to either side where there is no trend, by the normal law; good from ten points on. */
  readonly p: number;
}

/**
 * Kendall's S between time and value over its standard deviation: |z| > 2.58 comes about by chance once in a hundred
 * times. Var S = (n (n-1) (2n+5) - sum over ties t (t-1) (2t+5)) / 18, for ties of values (M. Kendall, Rank
 * Correlation Methods, 4th ed. 1970; M. Hollander & D. Wolfe 1973, 8.1). No continuity correction.
 */
export function trendTest(points: readonly TimedValue[]): TrendTest {
  let s = 0;
  pairs(points, (one, other) => {
    s += Math.sign(other.time - one.time) * Math.sign(other.value - one.value);
  });
  const deviation = Math.sqrt(varianceOfS(points));
  const z = deviation === 0 ? 0 : s / deviation;
  return { s, z, p: 2 * normalAbove(Math.abs(z)) };
}

export interface TrendSlope {
  readonly slope: number;
  /** Of the interval asked for. */
  readonly from: number;
  readonly to: number;
}

/**
 * The median of the slopes of all pairs, with the interval that takes in all slopes which Kendall's test would not
 * throw out: (N -+ C) / 2 of them lie to either side, C = z sqrt(Var S) (P. K. Sen, J. Amer. Statist. Assoc. 63
 * (1968) 1379). `z` is half of the interval in standard deviations: 1.6449 for 90 %. Undefined for fewer than two
 * points at times of their own.
 */
export function trendSlope(points: readonly TimedValue[], z: number): TrendSlope | undefined {
  const slopes: number[] = [];
  pairs(points, (one, other) => {
    if (one.time !== other.time) slopes.push((other.value - one.value) / (other.time - one.time));
  });
  if (slopes.length === 0) return undefined;
  slopes.sort((a, b) => a - b);
  const reach = z * Math.sqrt(varianceOfS(points));
  const below = Math.max(1, Math.round((slopes.length - reach) / 2));
  return {
    slope: median(slopes),
    from: slopes[below - 1]!,
    to: slopes[slopes.length - below]!,
  };
}

function varianceOfS(points: readonly TimedValue[]): number {
  const ties = new Map<number, number>();
  for (const { value } of points) ties.set(value, (ties.get(value) ?? 0) + 1);
  const part = (n: number): number => n * (n - 1) * (2 * n + 5);
  return [...ties.values()].reduce((sum, tied) => sum - part(tied), part(points.length)) / 18;
}

function pairs(points: readonly TimedValue[], each: (one: TimedValue, other: TimedValue) => void): void {
  for (let at = 0; at < points.length; at++)
    for (let after = at + 1; after < points.length; after++) each(points[at]!, points[after]!);
}
