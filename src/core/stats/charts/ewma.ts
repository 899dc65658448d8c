import { findRoot, gaussLegendre, solveLinear } from '../../numeric/index.js';
import { normalDensity } from '../distributions/normal.js';
import type { ControlLimits } from './control-limits.js';

export interface EwmaChart {
  readonly target: number;
  /** Standard deviation of single readings. */
  readonly sigma: number;
  /** Weight of the newest reading, more than 0 and at most 1. */
  readonly weight: number;
  /** Half width of the limits in standard deviations of the mean that runs along. */
  readonly width: number;
}

/** z_t = weight x_t + (1 - weight) z_(t-1), begun at the target (S. Roberts, Technometrics 1 (1959) 239). */
export function ewmaPath(values: readonly number[], { target, weight }: EwmaChart): readonly number[] {
  const path: number[] = [];
  for (const value of values) path.push(weight * value + (1 - weight) * (path.at(-1) ?? target));
  return path;
}

/**
 * Limits of the t-th point: target -+ width sigma sqrt(w/(2-w) [1 - (1-w)^2t]). Without t those that it settles to
 * (NIST/SEMATECH e-Handbook 6.3.2.4 uses these from the first point on).
 */
export function ewmaLimits(chart: EwmaChart, t = Number.POSITIVE_INFINITY): ControlLimits {
  const { target, sigma, weight, width } = chart;
  const share = (weight / (2 - weight)) * (1 - (1 - weight) ** (2 * t));
  const half = width * sigma * Math.sqrt(share);
  return { centre: target, lower: target - half, upper: target + half };
}

const NODES = 48;

/**
 * Mean number of readings until a signal when the process stands `shift` standard deviations off from the start, limits
 * as it settles to: L(z) = 1 + (1/w) INT L(y) phi((y - (1-w) z)/w - shift) dy, by Gauss-Legendre (S. Crowder,
 * Technometrics 29 (1987) 401). With shift 0 it says how far false alarms lie apart.
 */
export function ewmaRunLength({ weight, width }: Pick<EwmaChart, 'weight' | 'width'>, shift: number): number {
  const half = width * Math.sqrt(weight / (2 - weight));
  const nodes = gaussLegendre(NODES).map((node) => ({ at: half * node.at, weight: half * node.weight }));
  const kernel = (from: number, to: number): number =>
    normalDensity((to - (1 - weight) * from) / weight - shift) / weight;
  const rows = nodes.map((row, i) =>
    nodes.map((column, j) => Number(i === j) - column.weight * kernel(row.at, column.at)),
  );
  const lengths = solveLinear(
    rows,
    nodes.map(() => 1),
  )!;
  return nodes.reduce((sum, node, j) => sum + node.weight * kernel(0, node.at) * lengths[j]!, 1);
}

/** The width at which false alarms lie so many readings apart on average; undefined where none from 0.5 to 6 does. */
export const ewmaWidthFor = (runLength: number, weight: number): number | undefined =>
  findRoot({
    f: (width) => Math.log(ewmaRunLength({ weight, width }, 0) / runLength),
    low: 0.5,
    high: 6,
    tolerance: 1e-6,
  });
