import { describe, expect, it } from 'vitest';
import { smallestSample } from '../../src/core/winding/index.js';

/** 1.959964 and so on: points of the normal distribution above which such a share lies. */
const ABOVE: Readonly<Record<number, number>> = {
  0.005: 2.5758293035,
  0.025: 1.9599639845,
  0.03: 1.8807936082,
  0.1: 1.2815515655,
};
/** So far off that the other tail of the two-sided test is out of sight, as in a one-sided plan. */
const FAR = 30;

const planFor = (good: number, bad: number) =>
  smallestSample({
    deviationM: 1,
    goodM: FAR - ABOVE[good]!,
    badM: FAR - ABOVE[bad]!,
    stopAtMost: 0.05,
    letGoAtMost: 0.1,
    least: 1,
    most: 100,
  });

describe('Sampling by variables with known spread (H. Truong, AccSamplingDesign, vignettes 2025: optVarPlan, normal, sigma known)', () => {
  it('2.5 % good, 10 % bad, risks 5 % and 10 %: n = 19, k = 1.579', () => {
    const { strings, stopBeyondM } = planFor(0.025, 0.1);
    expect(strings).toBe(19);
    // Its k keeps both risks half-way for the unrounded n = 18.6; ours keeps the producer's risk: 1.9600 - 1.6449/sqrt(19).
    expect(FAR - stopBeyondM).toBeCloseTo(1.9599639845 - 1.644853627 / Math.sqrt(19), 6);
    expect(Math.abs(FAR - stopBeyondM - 1.579)).toBeLessThan(0.005);
  });

  it('0.5 % good, 3 % bad, risks 5 % and 10 %: n = 18', () => {
    expect(planFor(0.005, 0.03).strings).toBe(18);
  });
});

describe('Sample size for a mean (NIST/SEMATECH e-Handbook 7.2.2.2; from memory)', () => {
  it('a shift of one standard deviation, one-sided, risks 5 % and 10 %: (1.645 + 1.282)^2 = 8.567, so 9', () => {
    const { strings } = smallestSample({
      deviationM: 1,
      goodM: FAR - 1,
      badM: FAR,
      stopAtMost: 0.05,
      letGoAtMost: 0.1,
      least: 1,
      most: 100,
    });
    expect(strings).toBe(9);
  });
});
