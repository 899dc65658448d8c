import { describe, expect, it } from 'vitest';
import { seededChance } from '../../src/core/foundation/index.js';
import {
  aboutTarget,
  baseByRange,
  capability,
  chiSquare,
  freeConfidence,
  howeFactor,
  normalAbove,
  normalDraw,
  normalityTest,
  oneSidedFactor,
  overallBase,
  type ProcessBase,
  readingsForFree,
  shareOutside,
  twoSidedFactor,
} from '../../src/core/stats/index.js';
import { given, qualityRows, relativeError } from './data/quality-rows.js';

const near = (found: number, expected: number, tolerance: number): void =>
  expect(Math.abs(found - expected)).toBeLessThan(tolerance);

describe('capability of the piston rings within 73.95 and 74.05 (R 4.2.2; qcc 2.7 prints 1.703, 1.663, 1.691)', () => {
  const first = qualityRows('montgomery-piston-rings.csv').filter((row) => row.phase1 === 'TRUE');
  const readings = first.map((row) => Number(row.diameter_mm));
  const groups = Array.from({ length: 25 }, (_, at) => readings.slice(5 * at, 5 * at + 5));
  const specification = { lower: 73.95, upper: 74.05 };

  it('by ranges within groups: Cp 1.70323, Cpk 1.66317, Cpm 1.691', () => {
    const process = given(baseByRange(groups));
    const { spread, centred } = given(capability({ specification, process, readings: 125 }));
    near(spread!.value, 1.70323, 1e-4);
    near(centred.value, 1.66317, 1e-4);
    near(aboutTarget(process, specification), 1.691, 5e-4);
  });

  it('by all readings: Pp 1.655086 (1.449212 to 1.860646), Ppk 1.616159 (1.406699 to 1.825619)', () => {
    const process = given(overallBase(readings));
    const { spread, centred } = given(capability({ specification, process, readings: 125 }));
    near(spread!.value, 1.655086, 1e-4);
    near(spread!.from, 1.449212, 1e-4);
    near(spread!.to, 1.860646, 1e-4);
    near(centred.value, 1.616159, 1e-4);
    near(centred.from, 1.406699, 1e-4);
    near(centred.to, 1.825619, 1e-4);
  });
});

describe('capability and its bounds', () => {
  const twenty: ProcessBase = { mean: 50, sigma: 1.75, degrees: 19 };

  it('n 20, s 1.75, 38 to 62: Cp 2.2857, 1.565 to 3.006 (Montgomery, example 8.4: 1.57 to 3.01 from 2.29)', () => {
    const { spread } = given(
      capability({ specification: { lower: 38, upper: 62 }, process: twenty, readings: 20 }),
    );
    near(spread!.value, 2.2857, 1e-3);
    near(spread!.from, 1.565, 1e-3);
    near(spread!.to, 3.006, 1e-3);
  });

  it.each([
    // What Cp must be seen to claim 1 at 95 %: sqrt(v/chi2(0.05)).
    [3, 4.42],
    [5, 2.37],
    [10, 1.65],
    [20, 1.37],
  ])('of %d strings a Cp of %d is needed to claim 1', (readings, needed) => {
    const process = { mean: 0, sigma: 1, degrees: readings - 1 };
    const specification = { lower: -3 * needed, upper: 3 * needed };
    near(given(capability({ specification, process, readings })).spread!.atLeast, 1, 4e-3);
    near(Math.sqrt((readings - 1) / chiSquare(readings - 1).quantile(0.05)), needed, 5e-3);
  });

  it('one limit gives no Cp; limits the wrong way round, or none, a fault', () => {
    const one = given(capability({ specification: { upper: 56 }, process: twenty, readings: 20 }));
    expect(one.spread).toBeUndefined();
    near(one.centred.value, 6 / 5.25, 1e-12);
    for (const specification of [{}, { lower: 2, upper: 1 }])
      expect(capability({ specification, process: twenty, readings: 20 })).toMatchObject({
        fault: { code: 'stats.limits-unusable' },
      });
  });

  it('the bound of Cpk is passed by the true one as often as it says: 95 in 100, 2,000 draws of 30', () => {
    const chance = seededChance(7);
    // True Cpk: 4 sigmas from the nearer limit.
    let held = 0;
    for (let draw = 0; draw < 2000; draw++) {
      const process = given(overallBase(Array.from({ length: 30 }, () => normalDraw(chance))));
      const { centred } = given(
        capability({ specification: { lower: -4, upper: 6 }, process, readings: 30 }),
      );
      if (centred.atLeast <= 4 / 3) held += 1;
    }
    // Bissell's bound is an approximation; the standard error of the share is 0.5 %.
    expect(held / 2000).toBeGreaterThan(0.935);
    expect(held / 2000).toBeLessThan(0.97);
  });

  it('outside of 3 sigmas lie 1,350 in a million to each side', () => {
    const { below, above } = shareOutside({ mean: 0, sigma: 1, degrees: 9 }, { lower: -3, upper: 3 });
    near(below, 1.349898e-3, 1e-9);
    near(above, normalAbove(3), 1e-18);
  });
});

describe('tolerance factors (R 4.2.2; row 43 also the R package tolerance 3.0.0)', () => {
  it.each(qualityRows('tolerance-factors.csv'))('$n readings, $P with $conf', (row) => {
    const asked = { readings: Number(row.n), share: Number(row.P), confidence: Number(row.conf) };
    near(oneSidedFactor(asked), Number(row.k1_exact), 1e-5);
    near(twoSidedFactor(asked), Number(row.k2_exact), 1e-5);
    near(howeFactor(asked), Number(row.k2_howe), 1e-5);
  });

  it('43, 0.90, 0.99 to eight digits: 1.87395361, 2.22282517 (tolerance 3.0.0)', () => {
    const asked = { readings: 43, share: 0.9, confidence: 0.99 };
    near(oneSidedFactor(asked), 1.87395361, 6e-9);
    near(twoSidedFactor(asked), 2.22282517, 6e-9);
  });

  it.each([
    // R. Odeh & D. Owen, Tables for normal tolerance limits (1980); from memory.
    [2, 0.95, 0.95, 36.519],
    [3, 0.95, 0.95, 9.789],
    [4, 0.95, 0.95, 6.341],
    [2, 0.99, 0.99, 234.877],
  ])(
    'of %d readings, %d with %d: %d, where Howe is off by up to a fourteenth',
    (readings, share, confidence, k) => {
      near(twoSidedFactor({ readings, share, confidence }), k, 6e-4);
    },
  );

  it('mean 97.07, s 0.0268: 97.010576 to 97.129424 by Howe (NIST/SEMATECH e-Handbook 7.2.6.3)', () => {
    const k = howeFactor({ readings: 43, share: 0.9, confidence: 0.99 });
    near(97.07 - k * 0.0268, 97.010576, 1e-6);
    near(97.07 + k * 0.0268, 97.129424, 1e-6);
  });

  it('Howe is within 0.4 % from five readings on', () => {
    for (const readings of [5, 7, 12, 25, 60, 200]) {
      const asked = { readings, share: 0.95, confidence: 0.95 };
      expect(relativeError(howeFactor(asked), twoSidedFactor(asked))).toBeLessThan(4e-3);
    }
  });
});

describe('tolerance limits without a distribution (Wilks 1941)', () => {
  it('93 readings hold 95 % with 95 % between least and greatest, 59 beyond one (NIST/SEMATECH e-Handbook 7.2.6.4)', () => {
    expect(readingsForFree({ share: 0.95, confidence: 0.95 })).toBe(93);
    expect(readingsForFree({ share: 0.95, confidence: 0.95, sides: 1 })).toBe(59);
    expect(readingsForFree({ share: 0.99, confidence: 0.95, sides: 1 })).toBe(299);
  });

  it('is 1 - n p^(n-1) + (n-1) p^n', () => {
    near(freeConfidence(93, { share: 0.95 }), 1 - 93 * 0.95 ** 92 + 92 * 0.95 ** 93, 1e-13);
  });
});

describe('whether readings are normal (Anderson & Darling)', () => {
  const weights = [148, 154, 158, 160, 161, 162, 166, 170, 182, 195, 236];

  it('weights of eleven men (Shapiro & Wilk 1965): A2 0.94677 before the correction (SciPy 1.17.1), not normal', () => {
    const { statistic, p } = given(normalityTest(weights));
    near(statistic / (1 + 0.75 / 11 + 2.25 / 121), 0.9467718795988862, 1e-12);
    expect(p).toBeLessThan(0.02);
  });

  it.each([
    // D'Agostino & Stephens 1986, table 4.7, case 3: points of A2 as corrected.
    [0.1, 0.631],
    [0.05, 0.752],
    [0.025, 0.873],
    [0.01, 1.035],
  ])('a share of %d lies beyond %d', (share, point) => {
    const chance = seededChance(31);
    let beyond = 0;
    let below = 0;
    for (let draw = 0; draw < 4000; draw++) {
      const { statistic, p } = given(normalityTest(Array.from({ length: 20 }, () => normalDraw(chance))));
      if (statistic > point) beyond += 1;
      if (p < share) below += 1;
    }
    const error = Math.sqrt((share * (1 - share)) / 4000);
    near(beyond / 4000, share, 4 * error);
    near(below / 4000, share, 4 * error);
  });

  it('fewer than eight tell nothing, equal ones neither', () => {
    expect(normalityTest([1, 2, 3])).toMatchObject({ fault: { code: 'stats.too-few', given: 3, needed: 8 } });
    expect(normalityTest(Array(9).fill(5) as number[])).toMatchObject({ fault: { code: 'stats.no-spread' } });
  });
});
