import { describe, expect, it } from 'vitest';
import { gammaDistribution } from '../../src/core/stats/index.js';
import { afterCounts, gammaMean } from '../../src/core/winding/index.js';

describe('scrap per set-up, against print', () => {
  // A. Gelman, J. B. Carlin, H. S. Stern, D. B. Dunson, A. Vehtari, D. B. Rubin: Bayesian Data Analysis, 3rd ed. 2013, sec. 2.6,
  // "Estimating a rate from Poisson data: an idealized example" (asthma mortality). Figures from memory of the page, each of them
  // also worked out anew here.
  const prior = { shape: 3, rate: 5 };

  it('turns a Gamma(3, 5) prior by 3 deaths among 200,000 into mean 0.86 and P(theta > 1) = 0.30 (Gelman et al. 2013, 2.6)', () => {
    expect(gammaMean(prior)).toBe(0.6);
    // "97.5 % of the mass of the density lies below 1.44".
    expect(gammaDistribution(prior.shape).below(1.44 * prior.rate)).toBeCloseTo(0.975, 3);
    const after = afterCounts(prior, { counted: 3, exposure: 2 });
    expect(after).toEqual({ shape: 6, rate: 7 });
    expect(gammaMean(after)).toBeCloseTo(0.86, 2);
    expect(gammaDistribution(after.shape).above(after.rate)).toBeCloseTo(0.3, 2);
  });

  it('turns it by 30 deaths in ten years into Gamma(33, 25), mean 1.32 and P(theta > 1) = 0.93 (Gelman et al. 2013, 2.6)', () => {
    const after = afterCounts(prior, { counted: 30, exposure: 20 });
    expect(after).toEqual({ shape: 33, rate: 25 });
    expect(gammaMean(after)).toBeCloseTo(1.32, 2);
    expect(gammaDistribution(after.shape).above(after.rate)).toBeCloseTo(0.93, 2);
  });
});
