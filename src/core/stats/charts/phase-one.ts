import { type Result, succeed } from '../../foundation/index.js';
import type { StatsFault } from '../stats-fault.js';
import { type ControlLimits, outside } from './control-limits.js';

export interface PhaseOne<Point> {
  readonly points: readonly Point[];
  /** Places, from 0, of points with a cause that was found and mended: they say nothing of the process as it is. */
  readonly leftOut: ReadonlySet<number>;
  /** What the points that stay say: limits for a point. */
  readonly limitsFrom: (points: readonly Point[]) => Result<(point: Point) => ControlLimits, StatsFault>;
  readonly valueAt: (point: Point) => number;
}

/**
 * Limits from a first stretch, and the places that still lie outside of them: for each a cause is looked for, and only
 * where one is found is the point left out the next time (Montgomery, Introduction to statistical quality control, 6.2).
 * Leaving points out because they lie outside would make any process look steady.
 */
export function phaseOne<Point>({
  points,
  leftOut,
  limitsFrom,
  valueAt,
}: PhaseOne<Point>): Result<
  { readonly limitsOf: (point: Point) => ControlLimits; readonly toExplain: readonly number[] },
  StatsFault
> {
  const limits = limitsFrom(points.filter((_, at) => !leftOut.has(at)));
  if (!limits.ok) return limits;
  const signals = outside(points.map(valueAt), points.map(limits.value));
  return succeed({ limitsOf: limits.value, toExplain: signals.filter((at) => !leftOut.has(at)) });
}
