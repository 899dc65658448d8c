import { describe, expect, it } from 'vitest';
import { bendForceAt, bendForceN } from './bend-force.js';

const guitar = { speakingLengthM: 0.648, stretchingLengthM: 0.85 };

describe('the force that bends a whole tone', () => {
  it('is read off the curve within 0.01 % of the bend solved outright, from nylon to slack bass strings', () => {
    const at = bendForceAt(guitar);
    for (let kappa = 20; kappa < 4000; kappa *= 1.037) {
      const exact = bendForceN({ tensionN: 70, axialStiffnessN: 70 * kappa }, guitar)!;
      expect(Math.abs(at(70, 70 * kappa)! / exact - 1)).toBeLessThan(1e-4);
    }
  });

  it('beyond the curve is solved outright', () => {
    const slack = { tensionN: 10, axialStiffnessN: 60_000 };
    expect(bendForceAt(guitar)(slack.tensionN, slack.axialStiffnessN)).toBe(bendForceN(slack, guitar));
  });

  it('grows with pull among plain strings at one pitch, whose EA/T is one number (Grimes 2014, eq. 6)', () => {
    const light = bendForceN({ tensionN: 60, axialStiffnessN: 60 * 140 }, guitar)!;
    const heavy = bendForceN({ tensionN: 90, axialStiffnessN: 90 * 140 }, guitar)!;
    expect(heavy / light).toBeCloseTo(1.5, 9);
  });
});
