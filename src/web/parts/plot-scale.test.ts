import { describe, expect, it } from 'vitest';
import { plotScale, roundTicks, tickDecimals } from './plot-scale.js';

describe('the scale of a plot', () => {
  it('has its ticks at round figures', () => {
    expect(roundTicks(0.13, 1.07)).toEqual([0.2, 0.4, 0.6, 0.8, 1]);
    expect(roundTicks(-30, 40)).toEqual([-20, 0, 20, 40]);
  });

  it('shows its ticks by as many decimals as tell them apart', () => {
    expect(tickDecimals([0, 1000, 2000])).toBe(0);
    expect(tickDecimals([0.2, 0.4])).toBe(1);
    expect(tickDecimals([0.05, 0.1])).toBe(2);
  });

  it('holds every value between its ends, in order', () => {
    const { place } = plotScale([3, 1, 2], [100, 200]);
    expect(place(1)).toBeGreaterThan(100);
    expect(place(3)).toBeLessThan(200);
    expect(place(2)).toBeCloseTo(150);
  });

  it('runs the other way where it is asked to', () => {
    const { place } = plotScale([1, 2], [200, 0]);
    expect(place(2)).toBeLessThan(place(1));
  });

  it('opens round a single value', () => {
    const { place, ticks } = plotScale([5], [0, 10]);
    expect(place(5)).toBeCloseTo(5);
    expect(ticks.length).toBeGreaterThan(1);
  });

  it('takes values that differ by rounding alone for one', () => {
    const { ticks } = plotScale([0.1 + 0.2, 0.3], [0, 10]);
    expect(new Set(ticks).size).toBe(ticks.length);
    expect(tickDecimals(ticks)).toBeLessThan(4);
  });
});
