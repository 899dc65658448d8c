import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { freeGauges } from './free-gauge.js';
import type { StringCandidate } from './string-candidate.js';

const string = (gaugeThou: number, kind: 'plain' | 'wound', densityKgPerM3: number): StringCandidate => ({
  id: `${gaugeThou} ${kind}`,
  gaugeThou,
  kind,
  material: kind === 'plain' ? 'plain-steel' : 'pure-nickel',
  recipeId: `${gaugeThou} ${kind}`,
  linearDensityKgPerM: densityKgPerM3 * (Math.PI / 4) * (gaugeThou * 2.54e-5) ** 2,
  axialStiffnessN: 1e4,
  breakingLoadN: 500,
  onShelf: 0,
});
const plains = [8, 10, 13, 17].map((gauge) => string(gauge, 'plain', 7850));
const wounds = [24, 30, 36, 42, 50, 60].map((gauge) => string(gauge, 'wound', 6300 + 4 * gauge));
const at = (targetTensionN: number, frequencyHz: number) => ({
  speakingLengthM: 0.648,
  frequencyHz,
  targetTensionN,
});

describe('the free gauge', () => {
  it('of a plain string has exactly the wished pull: d = sqrt(4 T / (pi rho)) / (2 L f)', () => {
    fc.assert(
      fc.property(fc.double({ min: 40, max: 120, noNaN: true }), (pullN) => {
        const [free] = freeGauges(at(pullN, 246.94), plains);
        const exactM = Math.sqrt((4 * pullN) / (Math.PI * 7850)) / (2 * 0.648 * 246.94);
        expect(free!.gaugeThou * 2.54e-5).toBeCloseTo(exactM, 12);
      }),
    );
  });

  it('of a wound string gives back a candidate for the pull of that candidate', () => {
    for (const { gaugeThou, linearDensityKgPerM } of wounds) {
      const [free] = freeGauges(at(linearDensityKgPerM * (2 * 0.648 * 110) ** 2, 110), wounds);
      expect(free).toEqual({
        kind: 'wound',
        material: 'pure-nickel',
        gaugeThou: expect.closeTo(gaugeThou, 9),
      });
    }
  });

  it('between wound candidates comes within 0.5 % of a string made so', () => {
    const between = string(39, 'wound', 6300 + 4 * 39);
    const [free] = freeGauges(at(between.linearDensityKgPerM * (2 * 0.648 * 98) ** 2, 98), wounds);
    expect(Math.abs(free!.gaugeThou / 39 - 1)).toBeLessThan(0.005);
  });

  it('is not told beyond the thickest wound string', () => {
    expect(freeGauges(at(400, 41.2), wounds)).toEqual([]);
  });

  it('is told for each kind and material apart', () => {
    expect(
      freeGauges(at(75, 196), [...wounds, ...plains, string(12, 'wound', 6300)]).map(({ kind }) => kind),
    ).toEqual(['plain', 'wound']);
  });
});
