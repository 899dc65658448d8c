import { describe, expect, it } from 'vitest';
import { ALLOYS } from '../../materials/index.js';
import type { Construction } from '../../string/index.js';
import { CALIBRATION_PRIOR, priorMiddle } from './calibration-prior.js';
import { slopesUnderTension, stringSlopes } from './string-slopes.js';

const S = 0.4e-3;
const W = 0.3e-3;
const HEX: Construction = {
  kind: 'wound',
  core: { shape: 'hex', sizeM: S, alloy: 'music-wire', strengthTable: 'astm-a228' },
  layers: [{ wireDiameterM: W, alloy: 'pure-nickel', gap: 0 }],
};
const MIDDLE = priorMiddle(CALIBRATION_PRIOR);

describe('how a string goes with its unknowns', () => {
  const { byUnknown, byWire, byDiameter, expected } = stringSlopes(HEX, MIDDLE);
  const [mean, largest, weight] = byUnknown;

  it('mean diameter: s by the seat, 2 w by flattening, nothing else', () => {
    expect(mean![0]! / S).toBeCloseTo(1, 8);
    expect(mean![2]! / (2 * W)).toBeCloseTo(1, 8);
    expect([mean![1], mean![3], mean![4], mean![5]].map((slope) => Math.abs(slope!) < 1e-12)).toEqual([
      true,
      true,
      true,
      true,
    ]);
  });

  it('largest diameter: s by its own seat', () => {
    expect(largest![1]! / S).toBeCloseTo(1, 8);
    expect(largest![0]!).toBeCloseTo(0, 12);
  });

  it('weight: rho pi² w s / 4 by the seat (touching turns), less the share of the wrap by the gap', () => {
    const density = ALLOYS['pure-nickel'].densityKgPerM3.value;
    const byRule = (density * Math.PI ** 2 * W * S) / 4 / expected[2]!;
    expect(weight![0]! / byRule).toBeCloseTo(1, 4);
    const wrapShare = (density * Math.PI ** 2 * W * (MIDDLE[0]! * S + MIDDLE[2]! * W)) / 4 / expected[2]!;
    // A helix grows a little longer as it opens: the share falls short of the whole by the lead angle's square, 1 %.
    expect(-weight![3]! / wrapShare).toBeGreaterThan(0.97);
    expect(-weight![3]! / wrapShare).toBeLessThan(1);
  });

  it('weight by diameter is the rule of the measured diameter', () => {
    const density = ALLOYS['pure-nickel'].densityKgPerM3.value;
    expect(byDiameter[2]! / ((density * Math.PI ** 2 * W) / 4 / expected[2]!)).toBeCloseTo(1, 8);
  });

  it('wires: the seat times the core, twice the flattening of the wrap', () => {
    expect(byWire[0]![0]!).toBeCloseTo(MIDDLE[0]!, 8);
    expect(byWire[0]![1]!).toBeCloseTo(2 * MIDDLE[2]!, 8);
  });

  it('a round core leaves no seat open, a plain string nothing', () => {
    const round = stringSlopes({ ...HEX, core: { ...HEX.core, shape: 'round' } }, MIDDLE);
    expect(round.byUnknown[0]![0]!).toBe(0);
    const plain = stringSlopes({ kind: 'plain', wire: { ...HEX.core, shape: 'round' } }, MIDDLE);
    expect(plain.byUnknown.flat().every((slope) => slope === 0)).toBe(true);
    expect(plain.byWire[0]![0]!).toBeCloseTo(1, 8);
  });

  it('tension moves flattening by its logarithm', () => {
    expect(slopesUnderTension(mean!, Math.E)[5]!).toBeCloseTo(2 * W, 12);
    expect(slopesUnderTension(mean!)).toBe(mean);
  });
});
