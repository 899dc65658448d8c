import { describe, expect, it } from 'vitest';
import { dialCurve } from './dial-curve.js';

const straight = [10, 20, 30, 40, 50].map((dial) => ({ dial, traversePerTurnM: dial * 1e-5 }));

describe('the calibration of a gearbox', () => {
  it('is a curve through every measured row', () => {
    const { points } = dialCurve(straight)!;
    expect(points[0]).toEqual(straight[0]);
    expect(points.at(-1)?.traversePerTurnM).toBeCloseTo(5e-4, 12);
    expect(points.find(({ dial }) => dial === 30)?.traversePerTurnM).toBeCloseTo(3e-4, 12);
  });

  it('has rows that agree where they lie on one line', () => {
    for (const { offM } of dialCurve(straight)!.residuals) expect(Math.abs(offM)).toBeLessThan(1e-15);
  });

  it('shows the row that was misread', () => {
    const misread = straight.map((row) => (row.dial === 30 ? { dial: 30, traversePerTurnM: 3.4e-4 } : row));
    const { residuals } = dialCurve(misread)!;
    const worst = residuals.toSorted((a, b) => Math.abs(b.offM) - Math.abs(a.offM))[0];
    expect(worst?.dial).toBe(30);
    expect(worst?.offM).toBeGreaterThan(1e-5);
  });

  it('has nothing to tell by of three rows, through which a parabola always goes', () => {
    expect(dialCurve(straight.slice(0, 3))?.residuals).toEqual([]);
  });

  it('cannot be laid through rows that turn back', () => {
    expect(dialCurve([...straight, { dial: 60, traversePerTurnM: 1e-5 }])).toBeUndefined();
    expect(dialCurve(straight.slice(0, 1))).toBeUndefined();
  });
});
