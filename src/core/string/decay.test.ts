import { describe, expect, it } from 'vitest';
import { decayDecibelsPerS, decayPerS } from './decay.js';

const LOSSLESS = { pullLoss: 0, airLossPerS: 0, bendingLoss: 0 };
const string = { tensionN: 70, bendingStiffnessNM2: 5e-5, speakingLengthM: 0.65 };

describe('the decay of a partial', () => {
  it('is nothing in a string that loses nothing', () => {
    expect(decayPerS({ ...string, losses: LOSSLESS }, { n: 3, frequencyHz: 330 })).toBe(0);
  });

  it('by air alone is the same at every pitch: half the air loss on a limp string', () => {
    const limp = { ...string, bendingStiffnessNM2: 0, losses: { ...LOSSLESS, airLossPerS: 1.2 } };
    expect(decayPerS(limp, { n: 1, frequencyHz: 82 })).toBeCloseTo(0.6, 12);
    expect(decayPerS(limp, { n: 9, frequencyHz: 740 })).toBeCloseTo(0.6, 12);
  });

  it('by rubbing turns grows as the pitch', () => {
    const rubbing = { ...string, losses: { ...LOSSLESS, pullLoss: 1e-4 } };
    const low = decayPerS({ ...rubbing, bendingStiffnessNM2: 0 }, { n: 1, frequencyHz: 100 });
    const high = decayPerS({ ...rubbing, bendingStiffnessNM2: 0 }, { n: 2, frequencyHz: 200 });
    expect(high / low).toBeCloseTo(2, 12);
  });

  it('of one neper a second is 8.686 decibels a second', () => {
    const limp = { ...string, bendingStiffnessNM2: 0, losses: { ...LOSSLESS, airLossPerS: 2 } };
    expect(decayDecibelsPerS(limp, { n: 1, frequencyHz: 100 })).toBeCloseTo(8.685889638, 9);
  });
});
