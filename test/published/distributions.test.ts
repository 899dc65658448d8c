import { describe, expect, it } from 'vitest';
import {
  betaDistribution,
  binomial,
  chiSquare,
  fRatio,
  gammaDistribution,
  hypergeometric,
  noncentralTBelow,
  normalAbove,
  normalBelow,
  normalQuantile,
  poisson,
  studentizedRangeBelow,
  studentizedRangeQuantile,
  studentT,
} from '../../src/core/stats/index.js';
import { qualityRows, relativeError } from './data/quality-rows.js';

/* Distribution functions against fifty digits, against another library, and against tables in print. */

type Law = (...given: readonly number[]) => number;

const LAWS: Readonly<Record<string, Law>> = {
  'normal-above': (z) => normalAbove(z!),
  'gamma-below': (a, x) => gammaDistribution(a!).below(x!),
  'gamma-above': (a, x) => gammaDistribution(a!).above(x!),
  'beta-below': (x, a, b) => betaDistribution(a!, b!).below(x!),
  'beta-above': (x, a, b) => betaDistribution(a!, b!).above(x!),
  'normal-quantile': (p) => normalQuantile(p!),
  'chi-square-quantile': (p, v) => chiSquare(v!).quantile(p!),
  't-quantile': (p, v) => studentT(v!).quantile(p!),
  'f-quantile': (p, a, b) => fRatio(a!, b!).quantile(p!),
  'f-above': (f, a, b) => fRatio(a!, b!).above(f!),
  'beta-quantile': (p, a, b) => betaDistribution(a!, b!).quantile(p!),
  'binomial-at': (k, n, p) => binomial(n!, p!).at(k!),
  'binomial-up-to': (k, n, p) => binomial(n!, p!).upTo(k!),
  'binomial-from': (k, n, p) => binomial(n!, p!).from(k!),
  'poisson-at': (k, mean) => poisson(mean!).at(k!),
  'poisson-up-to': (k, mean) => poisson(mean!).upTo(k!),
  'poisson-from': (k, mean) => poisson(mean!).from(k!),
  'hypergeometric-at': (k, lot, bad, drawn) => hypergeometric({ lot: lot!, bad: bad!, drawn: drawn! }).at(k!),
  'hypergeometric-up-to': (k, lot, bad, drawn) =>
    hypergeometric({ lot: lot!, bad: bad!, drawn: drawn! }).upTo(k!),
  'noncentral-t-below': (t, degrees, shift) => noncentralTBelow(t!, { degrees: degrees!, shift: shift! }),
  'range-below': (q, means, degrees) => studentizedRangeBelow(q!, { means: means!, degrees: degrees! }),
  'range-quantile': (p, means, degrees) => studentizedRangeQuantile(p!, { means: means!, degrees: degrees! }),
};

interface Row {
  readonly law: string;
  readonly given: readonly number[];
  readonly expected: number;
}

const rowsOf = (file: string): readonly Row[] =>
  qualityRows(file).map(({ law = '', arguments: given = '', value }) => ({
    law,
    given: given.split(' ').map(Number),
    expected: Number(value),
  }));

describe('the tails of the distributions, to 2e-12 of themselves (mpmath 1.3.0 at 50 digits)', () => {
  it.each(rowsOf('reference-mpmath.csv'))('$law $given', ({ law, given, expected }) => {
    expect(relativeError(LAWS[law]!(...given), expected)).toBeLessThan(2e-12);
  });
});

describe('laws and quantiles (SciPy 1.17.1)', () => {
  // What is an integral or a search over one says so in its docstring; SciPy's own range is good to some 1e-9.
  const LOOSER: Readonly<Record<string, number>> = {
    'noncentral-t-below': 1e-10,
    'range-below': 1e-8,
    'range-quantile': 1e-7,
  };

  it.each(rowsOf('reference-scipy.csv'))('$law $given', ({ law, given, expected }) => {
    expect(relativeError(LAWS[law]!(...given), expected)).toBeLessThan(LOOSER[law] ?? 1e-11);
  });

  it('leave no law unchecked', () => {
    const checked = new Set(
      [...rowsOf('reference-mpmath.csv'), ...rowsOf('reference-scipy.csv')].map((r) => r.law),
    );
    expect([...checked].sort()).toEqual(Object.keys(LAWS).sort());
  });
});

describe('the normal distribution (Abramowitz & Stegun 1964, table 26.1)', () => {
  it.each([
    [0, 0.5],
    [1, 0.841344746068543],
    [2, 0.977249868051821],
    [3, 0.99865010196837],
    [-5, 2.8665157187919e-7],
  ])('below %d lies %d', (z, share) => {
    expect(relativeError(normalBelow(z), share)).toBeLessThan(1e-13);
  });
});

describe('percentage points in print (NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7)', () => {
  // Half a unit of the last digit printed.
  it.each([
    [1, 12.706],
    [10, 2.228],
    [30, 2.042],
    [100, 1.984],
  ])('t: 0.975 with %d degrees is %d', (degrees, t) => {
    expect(Math.abs(studentT(degrees).quantile(0.975) - t)).toBeLessThan(5.1e-4);
  });

  it.each([
    [1, 0.95, 3.841],
    [10, 0.05, 3.94],
    [10, 0.99, 23.209],
    [100, 0.95, 124.342],
  ])('chi-square: %d degrees, %d below %d', (degrees, share, square) => {
    expect(Math.abs(chiSquare(degrees).quantile(share) - square)).toBeLessThan(5.1e-4);
  });

  it.each([
    [1, 1, 161.448],
    [3, 10, 3.708],
    [10, 20, 2.348],
  ])('F: 0.95 with %d and %d degrees is %d', (over, under, f) => {
    expect(Math.abs(fRatio(over, under).quantile(0.95) - f)).toBeLessThan(5.1e-4);
  });

  it("the studentized range of 4 means with 16 degrees: 4.05 at 95 % (Harter's table; e-Handbook 7.4.7.1)", () => {
    expect(studentizedRangeQuantile(0.95, { means: 4, degrees: 16 })).toBeCloseTo(4.05, 2);
  });
});
