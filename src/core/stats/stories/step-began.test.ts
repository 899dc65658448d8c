import { describe, expect, it } from 'vitest';
import { seededChance } from '../../foundation/index.js';
import { median } from '../../numeric/index.js';
import { cusumPath } from '../charts/cusum.js';
import { normalDraw } from '../distributions/normal-draw.js';
import { stepBegan } from './step-began.js';

describe('when a step began', () => {
  it('is where it was planted, where nothing scatters', () => {
    expect(stepBegan([0, 0, 0, 2, 2], 0)).toBe(3);
    expect(stepBegan([5, 5, 3, 3, 3], 5)).toBe(2);
  });

  it('of two sigmas after the hundredth is found within two of it six times in seven or more', () => {
    const chance = seededChance(8);
    const offs = Array.from({ length: 1000 }, () => {
      const values: number[] = Array.from({ length: 100 }, () => normalDraw(chance));
      // Until a chart of single values signals; a false alarm before is not looked at.
      do values.push(2 + normalDraw(chance));
      while (Math.abs(values.at(-1)!) <= 3);
      return stepBegan(values, 0) - 100;
    });
    expect(median(offs)).toBe(0);
    expect(offs.filter((off) => Math.abs(off) <= 2).length / 1000).toBeGreaterThan(6 / 7);
  });

  it('comes near to what the sums say', () => {
    const values = [0, 0.3, -0.4, 0.1, -0.2, 0.2, 1.9, 2.2, 1.6, 2.1];
    const path = cusumPath(values, { target: 0, sigma: 1 }, { allowance: 0.5, limit: 4 });
    const at = path.findIndex(({ signal }) => signal);
    expect(at - path[at]!.sinceUpper + 1).toBe(6);
    expect(stepBegan(values.slice(0, at + 1), 0)).toBe(6);
  });
});
