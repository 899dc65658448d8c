import { describe, expect, it } from 'vitest';
import type { SetUpSheet } from '../../../core/winding/index.js';
import { bandRange, expectedBands, expectedWeight } from './expected-band.js';

const sheet = {
  meanDiameterM: { value: 0.001168, u: 0.00001 },
  caliperDiameterM: { value: 0.00118, u: 0.00002 },
  unitWeightKgPerM: { value: 0.007, u: 0.0001 },
} as unknown as SetUpSheet;

describe('what the micrometer should read', () => {
  const bands = expectedBands(sheet);

  it('has a band of two standard uncertainties either way', () => {
    expect(bands[0]).toMatchObject({
      inThou: '46.0 ± 0.8',
      inMillimetres: '1.168 mm, from 1.148 to 1.188 mm',
    });
    expect(expectedWeight(sheet)).toBe('7.000 g/m ± 2.9 %');
  });

  it('is drawn with the gauge in sight, however far off', () => {
    const { lowM, highM } = bandRange(bands, 50);
    expect(lowM).toBeLessThan(0.001148);
    expect(highM).toBeGreaterThan(0.00127);
  });
});
