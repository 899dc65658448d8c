import { expect, it } from 'vitest';
import { alongTime, cutAtGaps, stripOf } from './chart-scale.js';

it('a strip shows every value and every limit, the higher above', () => {
  const strip = stripOf([40, 58], [50], 100);
  expect(strip.place(58)).toBeGreaterThan(0);
  expect(strip.place(58)).toBeLessThan(strip.place(50));
  expect(strip.place(40)).toBeLessThan(100);
  expect(Number.isFinite(stripOf([20], [20], 100).place(20))).toBe(true);
});

it('moments lie along the width as they lie in time; a single one in the middle', () => {
  const moments = ['2027-03-01T00:00:00.000Z', '2027-03-02T00:00:00.000Z', '2027-03-05T00:00:00.000Z'];
  const x = alongTime({ from: moments[0]!, to: moments[2]! }, 400);
  expect(moments.map(x)).toEqual([0, 100, 400]);
  expect(alongTime({ from: moments[0]!, to: moments[0]! }, 400)(moments[0]!)).toBe(200);
  expect(x('2028-01-01T00:00:00.000Z')).toBe(400);
});

it('no line is drawn over what nobody read', () => {
  const readings = [1, 2, 5, 6].map((day) => ({ at: `2027-03-0${day}T07:00:00.000Z` }));
  const gap = { from: '2027-03-02T19:00:00.000Z', to: '2027-03-04T19:00:00.000Z' };
  const pieces = cutAtGaps(readings, [gap]).map((piece) => piece.map(({ at }) => at.slice(8, 10)));
  expect(pieces).toEqual([
    ['01', '02'],
    ['05', '06'],
  ]);
  expect(cutAtGaps(readings, [])).toHaveLength(1);
  expect(cutAtGaps([], [gap])).toEqual([]);
});
