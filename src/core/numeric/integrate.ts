import { invariant } from '../foundation/index.js';

export interface Integral {
  readonly f: (x: number) => number;
  readonly low: number;
  readonly high: number;
  /** How far the answer may be off, as a share of itself. */
  readonly tolerance?: number;
  /** Pieces to begin with; more where the function is narrow in a wide interval. */
  readonly pieces?: number;
}

const NODES = 20;
const MOST_DOUBLINGS = 8;

/**
 * Integral of a smooth f from `low` to `high`: Gauss-Legendre with 20 points on equal pieces, doubled until two sums
 * agree to `tolerance` (1e-12 unless told), at most eight times (P. Davis & P. Rabinowitz, Methods of numerical
 * integration, 2nd ed. 1984, 2.7).
 */
export function integrate({ f, low, high, tolerance = 1e-12, pieces = 4 }: Integral): number {
  let before = pieced(f, low, high, pieces);
  for (let doubled = 1; doubled <= MOST_DOUBLINGS; doubled++) {
    const now = pieced(f, low, high, pieces * 2 ** doubled);
    if (Math.abs(now - before) <= tolerance * Math.abs(now)) return now;
    before = now;
  }
  return before;
}

function pieced(f: Integral['f'], low: number, high: number, pieces: number): number {
  const half = (high - low) / pieces / 2;
  let sum = 0;
  for (let piece = 0; piece < pieces; piece++) {
    const middle = low + (2 * piece + 1) * half;
    for (const { at, weight } of LEGENDRE) sum += weight * f(middle + half * at);
  }
  return sum * half;
}

/** Nodes on [-1, 1] and weights of Gauss-Legendre: zeros of the Legendre polynomial by Newton's method. */
export function gaussLegendre(count: number): readonly { readonly at: number; readonly weight: number }[] {
  invariant(Number.isInteger(count) && count > 0, `${count} nodes were asked for`);
  return Array.from({ length: count }, (_, index) => {
    let at = -Math.cos((Math.PI * (index + 0.75)) / (count + 0.5));
    for (let round = 0; round < 6; round++) {
      const { value, slope } = legendre(count, at);
      at -= value / slope;
    }
    return { at, weight: 2 / ((1 - at * at) * legendre(count, at).slope ** 2) };
  });
}

function legendre(degree: number, x: number): { readonly value: number; readonly slope: number } {
  let before = 1;
  let value = x;
  for (let n = 2; n <= degree; n++)
    [before, value] = [value, ((2 * n - 1) * x * value - (n - 1) * before) / n];
  return { value, slope: (degree * (x * value - before)) / (x * x - 1) };
}

const LEGENDRE = gaussLegendre(NODES);
