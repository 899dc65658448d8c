import { expect, it } from 'vitest';
import { alongTime, stripOf } from './chart-scale.js';

it('a strip shows every value and every limit, the higher above', () => {
  const strip = stripOf([40, 58], [50], 100);
  expect(strip.place(58)).toBeGreaterThan(0);
  expect(strip.place(58)).toBeLessThan(strip.place(50));
  expect(strip.place(40)).toBeLessThan(100);
  expect(Number.isFinite(stripOf([20], [20], 100).place(20))).toBe(true);
});

it('moments lie along the width as they lie in time; a single one in the middle', () => {
  const moments = ['2027-03-01T00:00:00.000Z', '2027-03-02T00:00:00.000Z', '2027-03-05T00:00:00.000Z'];
  const x = alongTime(moments, 400);
  expect(moments.map(x)).toEqual([0, 100, 400]);
  expect(alongTime(moments.slice(0, 1), 400)(moments[0]!)).toBe(200);
});
