import { describe, expect, it } from 'vitest';
import { tensileStrength } from './strength.js';

const INCH_M = 0.0254;
const ask = (inches: number, reading: 'conservative' | 'linear' = 'linear') =>
  tensileStrength({ table: 'astm-a228', diameterM: inches * INCH_M, reading });

describe('tensile strength', () => {
  it('counts a size within half a ten-thousandth of an inch as the row', () => {
    for (const inches of [0.00995, 0.01, 0.01005]) {
      expect(ask(inches)).toMatchObject({ ok: true, value: { rule: 'row', standing: 'printed' } });
    }
    expect(ask(0.01006)).toMatchObject({ ok: true, value: { rule: 'linear' } });
  });

  it('does so at both ends of the table, and refuses beyond', () => {
    expect(ask(0.00395).ok).toBe(true);
    expect(ask(0.25005).ok).toBe(true);
    for (const inches of [0, -0.01, 0.0039, 0.2501, 1]) {
      expect(ask(inches)).toMatchObject({ ok: false, fault: { code: 'strength.outside-table' } });
    }
  });

  it('refuses what is no number', () => {
    expect(ask(Number.NaN).ok).toBe(false);
    expect(ask(Number.POSITIVE_INFINITY).ok).toBe(false);
  });

  it('names both rows of a linear reading and only one of a conservative one', () => {
    const linear = ask(0.017);
    expect(linear.ok && linear.value.lowerRowDiameterM).toBeCloseTo(0.016 * INCH_M, 12);
    expect(linear.ok && linear.value.rowDiameterM).toBeCloseTo(0.018 * INCH_M, 12);
    const careful = ask(0.017, 'conservative');
    expect(careful.ok && careful.value.lowerRowDiameterM).toBeUndefined();
  });

  it('leaves the grade A rows below 0.50 mm, which were not seen, unanswered', () => {
    const thin = tensileStrength({ table: 'jis-g-3522-a', diameterM: 0.00045, reading: 'conservative' });
    expect(thin).toMatchObject({ ok: false, fault: { leastM: 0.0005, mostM: 0.002 } });
  });
});
