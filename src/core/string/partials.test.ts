import { describe, expect, it } from 'vitest';
import { findRoot } from '../numeric/index.js';
import { partialsHz, type StringEnds } from './partials.js';

const stiff = (b: number) => ({
  frequencyHz: 1,
  bendingParameter: b,
  inharmonicityB: (Math.PI * b) ** 2,
});

/**
 * Exact partial n of a stiff string of unit length, pull and pitch: EI y'''' - T y'' = mu omega² y has
 * solutions in sin, cos (k) and sinh, cosh (q), q² - k² = 1/b², f = k q b / pi; the ends give an equation for k.
 */
function exactPartial(n: number, b: number, ends: StringEnds): number {
  const q = (k: number) => Math.sqrt(k * k + 1 / (b * b));
  const equation = (k: number): number => {
    if (ends === 'pinned') return Math.sin(k);
    if (ends === 'clamped') {
      const least = 1 / Math.cosh(q(k)) - Math.cos(k);
      return 2 * k * q(k) * least + Math.sin(k) * Math.tanh(q(k)) * (q(k) ** 2 - k * k);
    }
    return q(k) * Math.sin(k) - k * Math.cos(k) * Math.tanh(q(k));
  };
  const k = findRoot({ f: equation, low: n * Math.PI - 0.3, high: n * Math.PI + 1.2, tolerance: 1e-14 })!;
  return (k * q(k) * b) / Math.PI;
}

describe('the partials of a stiff string', () => {
  const cases = (['pinned', 'clamped', 'pinned-saddle-clamped-nut'] as const).flatMap((ends) =>
    [0.001, 0.003, 0.006].map((b) => [ends, b] as const),
  );

  it.each(cases)('%s ends, b = %f: solve the beam-string equation to second order in b', (ends, b) => {
    const partials = partialsHz(stiff(b), 10, ends);
    for (const [index, ours] of partials.entries()) {
      const n = index + 1;
      const exact = exactPartial(n, b, ends);
      // What is left out is of third order: b³ times numbers of the size of (1 + n² pi²).
      expect(Math.abs(ours / exact - 1)).toBeLessThan(4 * b ** 3 * (1 + (n * Math.PI) ** 2) + 1e-12);
    }
  });

  it('of a string without stiffness are whole multiples of its pitch', () => {
    expect(partialsHz({ ...stiff(0), frequencyHz: 110 }, 4, 'clamped')).toEqual([110, 220, 330, 440]);
  });

  it('lie highest where both ends are clamped, lowest where both are hinged', () => {
    const at = (ends: StringEnds) => partialsHz(stiff(0.004), 1, ends)[0]!;
    expect(at('clamped')).toBeGreaterThan(at('pinned-saddle-clamped-nut'));
    expect(at('pinned-saddle-clamped-nut')).toBeGreaterThan(at('pinned'));
  });
});
