import { describe, expect, it } from 'vitest';
import { type CalibrationPoint, offOf, ordinaryWithin, pointsOf, shareWithin } from './shown-points.js';

const point = (measured: number, familyKey = 'hex pure-nickel thin'): CalibrationPoint => ({
  stringId: `${measured}`,
  runId: 'r',
  recipeId: 'c',
  machineId: 'm',
  familyKey,
  predicted: 1,
  measured,
  weight: 1,
  isFlagged: false,
});

describe('strings against what was expected', () => {
  it('stand off by a length, or by a share of their weight', () => {
    const string = { predicted: 0.002, measured: 0.0021 };
    expect(offOf(string, 'diameter')).toBeCloseTo(0.0001, 12);
    expect(offOf(string, 'weight')).toBeCloseTo(0.05, 12);
  });

  it('are listed the farthest first, whichever way, and by family where one is asked for', () => {
    const points = [point(1.01), point(0.9), point(1.05, 'round pure-nickel thin')];
    expect(pointsOf(points, 'diameter', '').map(({ measured }) => measured)).toEqual([0.9, 1.05, 1.01]);
    expect(pointsOf(points, 'diameter', 'round pure-nickel thin')).toHaveLength(1);
  });

  it('come out ordinarily within both spreads together, as squares add', () => {
    const noise = { stringM: 3e-6, runM: 4e-6, stringWeight: 0.006, runWeight: 0.008 };
    expect(ordinaryWithin({ noise }, 'diameter')).toBeCloseTo(1.6449 * 5e-6, 12);
    expect(ordinaryWithin({ noise }, 'weight')).toBeCloseTo(0.016449, 9);
  });

  it('are counted within an interval', () => {
    expect(shareWithin([point(1.01), point(0.9)], 'diameter', 0.05)).toBe(0.5);
    expect(shareWithin([], 'diameter', 0.05)).toBe(0);
  });
});
