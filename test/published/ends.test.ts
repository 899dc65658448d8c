import { describe, expect, it } from 'vitest';
import {
  censoredLogLikelihood,
  censoredMean,
  coreEndSheet,
  type EndPull,
  goodInARowFor,
  jointStrength,
  pullLeftBehind,
} from '../../src/core/winding/index.js';
import { BENCH, PLAIN_12, specOf } from '../fixtures/winders.js';

describe('pull tests of ends, against print', () => {
  it('limits of a share: 3 of 20, 95 %, 0.0321 to 0.3789; 42 of 100, 0.3220 to 0.5229 (tables of the exact method)', () => {
    const ends = (good: number, tried: number): readonly EndPull[] =>
      Array.from({ length: tried }, (_, end) => ({
        forceN: 100,
        came: end < good ? 'held' : 'at-twist',
        leastBreakingN: end < good ? 100 : 200,
      }));
    const limits = (low: number, high: number) =>
      expect.objectContaining({ low: expect.closeTo(low, 4), high: expect.closeTo(high, 4) });
    expect(jointStrength(ends(3, 20), 0.9).holds).toEqual(limits(0.0321, 0.3789));
    expect(jointStrength(ends(42, 100), 0.9).holds).toEqual(limits(0.322, 0.5229));
    expect(jointStrength(ends(59, 59), 0.9).atLeast?.isEnough).toBe(true);
    expect(jointStrength(ends(58, 58), 0.9).atLeast?.isEnough).toBe(false);
  });

  it('good ends in a row: 59 for 95 % and 95 %, 29 for 95 % and 90 %, 22 for 90 % and 90 % (Wilks 1941; figures of the trade of reliability)', () => {
    expect(goodInARowFor(0.95, 0.95)).toBe(59);
    expect(goodInARowFor(0.95, 0.9)).toBe(29);
    expect(goodInARowFor(0.9, 0.9)).toBe(22);
  });

  it('mean and spread of a sample cut off after 7 of 10: 1.742 and 0.079 (A. K. Gupta, Biometrika 39, 1952, 260; data from memory)', () => {
    const days = [41, 44, 46, 54, 55, 58, 60];
    const seen = days.map(Math.log10);
    const readings = { seen, higherThan: [{ reading: seen.at(-1)!, times: 3 }] };
    const best = bestOf((mean, spread) => censoredLogLikelihood(readings, { mean, spread }));
    expect(best.mean).toBeCloseTo(1.742, 3);
    expect(best.spread).toBeCloseTo(0.079, 3);
  });

  it('a mean of readings that all were seen has the limits of Student’s t, where nothing was thought before', () => {
    // With the spread's prior flat in its logarithm the mean is Student's t about that of the readings: a known
    // result (e.g. A. Gelman et al., Bayesian Data Analysis, 3rd ed., 2013, section 3.2). t(9; 0.95) = 1.8331.
    const seen = [0.81, 0.84, 0.79, 0.88, 0.86, 0.9, 0.83, 0.85, 0.82, 0.87];
    const mean = seen.reduce((sum, each) => sum + each, 0) / seen.length;
    const s = Math.sqrt(seen.reduce((sum, each) => sum + (each - mean) ** 2, 0) / (seen.length - 1));
    const half = (1.8331 * s) / Math.sqrt(seen.length);
    const vague = { mean: { value: 0.8, u: 1 }, logSpread: { value: -3.5, u: 10 } };
    const found = censoredMean({ seen, higherThan: [] }, vague, 0.9);
    expect(found.middle).toBeCloseTo(mean, 3);
    expect(found.low).toBeCloseTo(mean - half, 3);
    expect(found.high).toBeCloseTo(mean + half, 3);
  });

  it('a rope on a post holds: 0.3 of friction, one turn 6.6 times, two turns 43 times (L. Euler 1769; table of the rope on a post)', () => {
    expect(1 / pullLeftBehind(1, 0.3)).toBeCloseTo(6.6, 1);
    expect(1 / pullLeftBehind(2, 0.3)).toBeCloseTo(43.4, 1);
    expect(1 / pullLeftBehind(5, 0.2)).toBeCloseTo(535.5, 1);
  });

  it('12 thou of music wire breaks at 377 ksi or 189.7 N at the least, and its end is pulled to 65 % of that (ASTM A228; elastic limit 65 to 75 %, music-wire data sheet)', () => {
    const sheet = coreEndSheet({ bench: BENCH, recipe: PLAIN_12, spec: specOf(PLAIN_12), quantity: 1 });
    if (!sheet.ok) throw new Error('the bench makes it');
    const { pull } = sheet.value;
    expect(pull!.strengthPa).toBeCloseTo(377 * 6.894757e6, -4);
    expect(pull!.leastBreakingN).toBeCloseTo(189.7, 1);
    expect(pull!.proofN).toBeCloseTo(0.65 * 189.7, 1);
    // The same reckoning as a plain string's 35 m/s at 72 N in 10 thou: stress over sqrt(E rho).
    const stressPa = pull!.proofN / pull!.areaM2;
    expect(pull!.whipMPerS).toBeCloseTo(stressPa / Math.sqrt(206e9 * 7850), 6);
  });
});

/** Climbs a likelihood of two figures on ever finer grids. */
function bestOf(log: (mean: number, spread: number) => number): { mean: number; spread: number } {
  let best = { mean: 1.7, spread: 0.1 };
  for (let step = 0.02; step > 1e-6; step /= 2) {
    for (let moved = true; moved; ) {
      moved = false;
      for (const [byMean, bySpread] of [
        [step, 0],
        [-step, 0],
        [0, step],
        [0, -step],
      ] as const) {
        const next = { mean: best.mean + byMean, spread: best.spread + bySpread };
        if (next.spread > 0 && log(next.mean, next.spread) > log(best.mean, best.spread)) {
          best = next;
          moved = true;
        }
      }
    }
  }
  return best;
}
