import { findRoot, gaussLegendre, solveLinear } from '../../numeric/index.js';
import { normalBelow, normalDensity } from '../distributions/normal.js';

/** Allowance and limit in standard deviations of a reading. */
export interface CusumRule {
  readonly allowance: number;
  readonly limit: number;
}

export interface CusumStep {
  /** Sums to the upper and the lower side, in the unit of the readings. */
  readonly upper: number;
  readonly lower: number;
  /** Readings since either sum left nought: a shift began after the reading before them. */
  readonly sinceUpper: number;
  readonly sinceLower: number;
  readonly signal: boolean;
}

/**
 * The two sums: C+ = max(0, x - (T + K) + C+), C- = max(0, (T - K) - x + C-), a signal beyond H; K and H are allowance
 * and limit times sigma (E. Page, Biometrika 41 (1954) 100; in this form Montgomery, Introduction to SQC, 9.1).
 */
export function cusumPath(
  values: readonly number[],
  about: { readonly target: number; readonly sigma: number },
  rule: CusumRule,
): readonly CusumStep[] {
  const slack = rule.allowance * about.sigma;
  const steps: CusumStep[] = [];
  for (const value of values) {
    const before = steps.at(-1);
    const upper = Math.max(0, value - about.target - slack + (before?.upper ?? 0));
    const lower = Math.max(0, about.target - slack - value + (before?.lower ?? 0));
    steps.push({
      upper,
      lower,
      sinceUpper: upper > 0 ? (before?.sinceUpper ?? 0) + 1 : 0,
      sinceLower: lower > 0 ? (before?.sinceLower ?? 0) + 1 : 0,
      signal: Math.max(upper, lower) > rule.limit * about.sigma,
    });
  }
  return steps;
}

const NODES = 40;

/**
 * Mean number of readings until a signal when the process stands `shift` standard deviations off, from sums of nought:
 * one side L(z) = 1 + L(0) Phi(k - z - shift) + INT L(y) phi(y + k - z - shift) dy (Page 1954, by Gauss-Legendre), both
 * sides 1/L = 1/L(up) + 1/L(down) (K. Kemp, J. Roy. Statist. Soc. B 23 (1961) 149).
 */
export const cusumRunLength = (rule: CusumRule, shift: number): number =>
  1 / (1 / oneSided(rule, shift) + 1 / oneSided(rule, -shift));

function oneSided({ allowance, limit }: CusumRule, shift: number): number {
  const inner = gaussLegendre(NODES).map(({ at, weight }) => ({
    at: (limit / 2) * (1 + at),
    weight: (limit / 2) * weight,
  }));
  const rowFrom = (z: number): readonly number[] => [
    normalBelow(allowance - z - shift),
    ...inner.map(({ at, weight }) => weight * normalDensity(at + allowance - z - shift)),
  ];
  const places = [0, ...inner.map(({ at }) => at)];
  const rows = places.map((z, i) => rowFrom(z).map((entry, j) => Number(i === j) - entry));
  return solveLinear(
    rows,
    places.map(() => 1),
  )![0]!;
}

/** The limit at which false alarms lie so many readings apart on average; undefined where none from 0.5 to 15 does. */
export const cusumLimitFor = (runLength: number, allowance: number): number | undefined =>
  findRoot({
    f: (limit) => Math.log(cusumRunLength({ allowance, limit }, 0) / runLength),
    low: 0.5,
    high: 15,
    tolerance: 1e-6,
  });
