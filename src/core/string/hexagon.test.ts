import { describe, expect, it } from 'vitest';
import { acrossCornersM, hexagonAreaM2, hexagonPerimeterM, hexagonSecondMomentM4 } from './hexagon.js';

/** Corners of a hexagon with `s` across flats, anticlockwise. */
const corners = (s: number): readonly (readonly [number, number])[] =>
  Array.from({ length: 6 }, (_, k) => {
    const angle = (k * Math.PI) / 3;
    return [(s / Math.sqrt(3)) * Math.cos(angle), (s / Math.sqrt(3)) * Math.sin(angle)] as const;
  });

const edges = (s: number) => corners(s).map((from, k, all) => [from, all[(k + 1) % 6]!] as const);

describe('a hexagon by its size across flats', () => {
  const s = 0.4064;

  it('has the area of its polygon (shoelace formula)', () => {
    const area = edges(s).reduce((sum, [[x0, y0], [x1, y1]]) => sum + (x0 * y1 - x1 * y0) / 2, 0);
    expect(hexagonAreaM2(s) / area).toBeCloseTo(1, 14);
  });

  it('has the second moment of its polygon about both axes (Green, polygon formula)', () => {
    const about = (pick: 0 | 1) =>
      edges(s).reduce((sum, [from, to]) => {
        const cross = from[0] * to[1] - to[0] * from[1];
        return sum + (cross * (from[pick] ** 2 + from[pick] * to[pick] + to[pick] ** 2)) / 12;
      }, 0);
    expect(hexagonSecondMomentM4(s) / about(0)).toBeCloseTo(1, 13);
    expect(hexagonSecondMomentM4(s) / about(1)).toBeCloseTo(1, 13);
  });

  it('is as wide over corners and as long round as its polygon', () => {
    const [first, , , opposite] = corners(s);
    expect(acrossCornersM(s)).toBeCloseTo(first![0] - opposite![0], 14);
    const round = edges(s).reduce((sum, [[x0, y0], [x1, y1]]) => sum + Math.hypot(x1 - x0, y1 - y0), 0);
    expect(hexagonPerimeterM(s)).toBeCloseTo(round, 14);
  });
});
