import { describe, expect, it } from 'vitest';
import { dialFit } from './dial-fit.js';

const rows = (...traverses: readonly (readonly [number, number])[]) =>
  traverses.map(([dial, mm]) => ({ dial, traversePerTurnM: mm / 1000 }));

describe('a measured dial table', () => {
  it('that rises stays as it is', () => {
    const table = rows([1, 0.1], [2, 0.2], [3, 0.35]);
    expect(dialFit(table)).toMatchObject({ direction: 'rising', rows: table, against: [] });
  });

  it('names the rows that go against the others, and how far they stand off', () => {
    const fit = dialFit(rows([1, 0.5], [2, 0.4], [3, 0.42], [4, 0.2]))!;
    expect(fit.direction).toBe('falling');
    expect(fit.against).toEqual([2, 3]);
    expect(fit.rows.map(({ traversePerTurnM }) => traversePerTurnM * 1000)).toEqual([
      0.5,
      expect.closeTo(0.41, 9),
      expect.closeTo(0.41, 9),
      0.2,
    ]);
    expect(fit.residuals[2]!.offM * 1000).toBeCloseTo(0.01, 9);
  });

  it('may have a setting more than once, which then counts as often', () => {
    const fit = dialFit(rows([2, 0.3], [1, 0.36], [1, 0.34], [1, 0.32], [3, 0.4]))!;
    expect(fit.rows[0]!.traversePerTurnM * 1000).toBeCloseTo((0.36 + 0.34 + 0.32 + 0.3) / 4, 9);
    expect(fit.residuals).toHaveLength(5);
    expect(dialFit(rows([1, 0.1], [1, 0.2]))).toBeUndefined();
  });
});
