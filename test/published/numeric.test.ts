import { describe, expect, it } from 'vitest';
import {
  compensatedSum,
  estimate,
  findRoot,
  gaussNewton,
  leastSquares,
  monotoneInterpolation,
  propagate,
} from '../../src/core/numeric/index.js';
import { NORRIS } from './data/norris.js';

/** NIST StRD, Misra1a: dental research on monomolecular adsorption, y and x; the sum of squares from memory. */
const MISRA1A: readonly (readonly [number, number])[] = [
  [10.07, 77.6],
  [14.73, 114.9],
  [17.94, 141.1],
  [23.93, 190.8],
  [29.61, 239.9],
  [35.18, 289.0],
  [40.02, 332.8],
  [44.82, 378.4],
  [50.76, 434.8],
  [55.05, 477.3],
  [61.01, 536.8],
  [66.4, 593.1],
  [75.47, 689.1],
  [81.78, 760.0],
];

const relativeError = (found: number, certified: number): number => Math.abs(found / certified - 1);

describe('least squares against the certified values of NIST StRD', () => {
  // Certified to 15 figures; 1e-12 leaves three for the rounding of 36 rows.
  it('Norris, linear: intercept -0.262323073774029, slope 1.00211681802045, residual SD 0.884796396144373', () => {
    const [intercept = 0, slope = 0] = leastSquares(
      NORRIS.map(([x]) => [1, x]),
      NORRIS.map(([, y]) => y),
    )!;
    expect(relativeError(intercept, -0.262323073774029)).toBeLessThan(1e-12);
    expect(relativeError(slope, 1.00211681802045)).toBeLessThan(1e-12);
    const squares = compensatedSum(NORRIS.map(([x, y]) => (y - intercept - slope * x) ** 2));
    expect(relativeError(Math.sqrt(squares / 34), 0.884796396144373)).toBeLessThan(1e-12);
  });

  // Certified to 11 figures. The second start is the nearer one that NIST gives.
  it.each([
    ['first', [500, 0.0001]],
    ['second', [250, 0.0005]],
  ])(
    'Misra1a, nonlinear, from the %s start: b1 238.94212918, b2 5.5015643181e-4, sum 0.12455138894',
    (_, start) => {
      const fit = gaussNewton({
        residuals: ([b1 = 0, b2 = 0]) => MISRA1A.map(([y, x]) => y - b1 * (1 - Math.exp(-b2 * x))),
        start,
      });
      expect(fit.converged).toBe(true);
      expect(relativeError(fit.parameters[0]!, 238.94212918)).toBeLessThan(1e-8);
      expect(relativeError(fit.parameters[1]!, 5.5015643181e-4)).toBeLessThan(1e-8);
      expect(relativeError(fit.sumOfSquares, 0.12455138894)).toBeLessThan(1e-10);
    },
  );
});

describe('monotone interpolation', () => {
  // Radiochemical data RPN 14 of Fritsch & Carlson (SIAM J. Numer. Anal. 17 (1980) 238) as rounded in the manual;
  // that the manual's example is RPN 14 is from memory.
  const XS = [7.99, 8.09, 8.19, 8.7, 9.2, 10, 12, 15, 20];
  const YS = [0, 0.27643e-4, 0.4375e-1, 0.16918, 0.46943, 0.94374, 0.99864, 0.99992, 0.99999];

  // Printed to four decimals.
  it.each([
    [7.99, 0.0],
    [9.191, 0.464],
    [10.392, 0.9645],
    [11.593, 0.9965],
    [12.794, 0.9992],
    [13.995, 0.9998],
    [15.196, 0.9999],
    [16.397, 1.0],
    [17.598, 1.0],
    [18.799, 1.0],
    [20.0, 1.0],
  ])('of RPN 14 at %d is %d (NAG Library manual, e01bec, example results)', (x, y) => {
    expect(Math.abs(monotoneInterpolation(XS, YS)(x) - y)).toBeLessThanOrEqual(0.5e-4);
  });

  it('of RPN 14 never overshoots, where a cubic spline does (Fritsch & Carlson 1980, fig. 1)', () => {
    const curve = monotoneInterpolation(XS, YS);
    let before = curve(7.99);
    for (let step = 1; step <= 12_010; step++) {
      const now = curve(Math.min(20, 7.99 + step / 1000));
      expect(now).toBeGreaterThanOrEqual(before);
      before = now;
    }
    expect(before).toBe(0.99999);
  });
});

describe('roots', () => {
  it('x^3 - 2x - 5 = 0 at 2.0945514815423265 (the example of J. Wallis, Algebra, 1685; digits from memory)', () => {
    const root = findRoot({ f: (x) => x ** 3 - 2 * x - 5, low: 2, high: 3, tolerance: 0 });
    expect(root).toBeCloseTo(2.0945514815423265, 14);
  });

  it('tan x = x at 4.493409457909064 (Abramowitz & Stegun 1964, table 4.19: 4.49341; further digits from memory)', () => {
    const root = findRoot({ f: (x) => Math.sin(x) - x * Math.cos(x), low: 4, high: 5, tolerance: 0 });
    expect(root).toBeCloseTo(4.493409457909064, 13);
  });
});

describe('uncertainty: end-gauge calibration of JCGM 100:2008, H.1, to first order (figures from memory)', () => {
  /** Length at 20 °C, nm: l = l_S + d - l_S (delta-alpha theta + alpha_S delta-theta). */
  const length = ([
    standard = 0,
    difference = 0,
    expansionGap = 0,
    theta = 0,
    expansion = 0,
    temperatureGap = 0,
  ]: readonly number[]) => [
    standard + difference - standard * (expansionGap * theta + expansion * temperatureGap),
  ];
  const INPUTS = [
    estimate(50_000_623, 25),
    estimate(215, 9.7),
    estimate(0, 0.58e-6),
    estimate(-0.1, 0.41),
    estimate(11.5e-6, 1.2e-6),
    estimate(0, 0.029),
  ];

  it('gives 50.000838 mm with a standard uncertainty of 32 nm', () => {
    const [result] = propagate(length, INPUTS);
    expect(result!.value).toBeCloseTo(50_000_838, 6);
    expect(Math.round(result!.u)).toBe(32);
  });

  // Printed to 0.1 nm, the last one cut off rather than rounded.
  it.each([
    ['the standard', 0, 25],
    ['the measured difference', 1, 9.7],
    ['the difference of expansion coefficients', 2, 2.9],
    ['the temperature of the bed', 3, 0],
    ['the expansion coefficient', 4, 0],
    ['the difference of temperatures', 5, 16.6],
  ])('%s contributes as in table H.1', (_, index, contribution) => {
    const alone = INPUTS.map(({ value, u }, position) => estimate(value, position === index ? u : 0));
    const [result] = propagate(length, alone);
    expect(Math.abs(result!.u - contribution)).toBeLessThan(0.1);
  });
});

describe('uncertainty', () => {
  it('of a product of powers: relative variances add with the squares of the exponents (JCGM 100:2008, 5.1.6)', () => {
    const [tension] = propagate(
      ([mu = 0, length = 0, frequency = 0]) => [mu * (2 * length * frequency) ** 2],
      [estimate(4e-4, 4e-7), estimate(0.648, 0.000648), estimate(329.63, 0.16)],
    );
    const relative = Math.hypot(1e-3, 2 * 1e-3, 2 * (0.16 / 329.63));
    expect(tension!.value).toBeCloseTo(4e-4 * (2 * 0.648 * 329.63) ** 2, 10);
    expect(relativeError(tension!.u / tension!.value, relative)).toBeLessThan(1e-9);
  });
});
