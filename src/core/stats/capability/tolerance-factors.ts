import { findRoot, integrate } from '../../numeric/index.js';
import { chiSquare } from '../distributions/chi-square.js';
import { noncentralTQuantile } from '../distributions/noncentral-t.js';
import { normalAbove, normalBelow, normalDensity, normalQuantile } from '../distributions/normal.js';

export interface ToleranceAsked {
  /** Readings that mean and standard deviation stand on, 2 or more. */
  readonly readings: number;
  /** Share of all strings that shall lie within. */
  readonly share: number;
  readonly confidence: number;
}

/**
 * k so that mean + k s lies above that share of a normal population with that confidence:
 * k = t'(confidence; n-1, z sqrt n)/sqrt n (NIST/SEMATECH e-Handbook 7.2.6.3; ISO 16269-6). Relative error below 1e-8.
 */
export function oneSidedFactor({ readings, share, confidence }: ToleranceAsked): number {
  const root = Math.sqrt(readings);
  const at = { degrees: readings - 1, shift: normalQuantile(share) * root };
  return noncentralTQuantile(confidence, at) / root;
}

/**
 * k so that mean -+ k s holds that share with that confidence, exactly: 2 INT P(chi2 > v r^2/k^2) sqrt n phi(z sqrt n)
 * dz = confidence, r the half width about z that holds the share (A. Wald & J. Wolfowitz, Ann. Math. Statist. 17 (1946)
 * 208). Relative error below 1e-8.
 */
export function twoSidedFactor(asked: ToleranceAsked): number {
  const near = howeFactor(asked);
  const off = (k: number): number => chanceToHold(k, asked) - asked.confidence;
  return findRoot({ f: off, low: near / 2, high: near * 2, tolerance: 1e-10 })!;
}

/**
 * W. Howe's approximation of the same, z sqrt(v (1 + 1/n)/chi2), as NIST/SEMATECH e-Handbook 7.2.6.3 has it: from five
 * readings on within 0.4 % of the exact factor (J. Amer. Statist. Assoc. 64 (1969) 610).
 */
export function howeFactor({ readings, share, confidence }: ToleranceAsked): number {
  const degrees = readings - 1;
  const square = chiSquare(degrees).quantile(1 - confidence);
  return normalQuantile((1 + share) / 2) * Math.sqrt((degrees * (1 + 1 / readings)) / square);
}

function chanceToHold(k: number, { readings, share }: ToleranceAsked): number {
  const law = chiSquare(readings - 1);
  const root = Math.sqrt(readings);
  const f = (z: number): number =>
    2 * law.above((readings - 1) * (halfWidth(z, share) / k) ** 2) * root * normalDensity(z * root);
  return integrate({ f, low: 0, high: 9 / root, tolerance: 1e-10, pieces: 1 });
}

/** Half of the interval about z that holds a share of the standard normal. */
function halfWidth(z: number, share: number): number {
  const f = (r: number): number => share - (normalBelow(r - z) - normalAbove(r + z));
  return findRoot({ f, low: 0, high: z + normalQuantile(share) + 1, tolerance: 1e-13 })!;
}
