import { describe, expect, it } from 'vitest';
import { diameterToleranceM, workshopDiameterToleranceM } from './diameter-tolerance.js';

describe('permissible variation of diameter', () => {
  it('is not made up for a standard that was not seen', () => {
    const asked = diameterToleranceM({ table: 'en-10270-1-sm', diameterM: 0.0005 });
    expect(asked).toEqual({ ok: false, fault: { code: 'tolerance.not-recorded', table: 'en-10270-1-sm' } });
  });

  it('is refused outside the sizes that the standard speaks for', () => {
    for (const diameterM of [0.00009, 0.0065, Number.NaN]) {
      const asked = diameterToleranceM({ table: 'astm-a228', diameterM });
      expect(asked).toMatchObject({ ok: false, fault: { code: 'tolerance.outside-table' } });
    }
    expect(diameterToleranceM({ table: 'jis-g-3522-a', diameterM: 0.00045 }).ok).toBe(false);
  });

  it('starts, for alloys without a standard here, at 1 % but 0.0002 in at least', () => {
    expect(workshopDiameterToleranceM(0.001)).toBeCloseTo(1e-5, 12);
    expect(workshopDiameterToleranceM(0.0002)).toBeCloseTo(5.08e-6, 12);
  });
});
