import { describe, expect, it } from 'vitest';
import { nextPoint } from './point-walk.js';

const POINTS = [
  { key: 'low left', x: 10, y: 90 },
  { key: 'high right', x: 90, y: 10 },
  { key: 'middle', x: 50, y: 50 },
];

describe('arrow keys among the points of a picture', () => {
  it('go sideways from left to right, and stop at the ends', () => {
    expect(nextPoint(POINTS, 'low left', 'ArrowRight')).toBe('middle');
    expect(nextPoint(POINTS, 'high right', 'ArrowRight')).toBeUndefined();
    expect(nextPoint(POINTS, 'low left', 'ArrowLeft')).toBeUndefined();
  });

  it('go up on the page, where y is smaller', () => {
    expect(nextPoint(POINTS, 'low left', 'ArrowUp')).toBe('middle');
    expect(nextPoint(POINTS, 'middle', 'ArrowDown')).toBe('low left');
  });

  it('leap to the ends by Home and End, and by other keys nowhere', () => {
    expect(nextPoint(POINTS, 'middle', 'Home')).toBe('low left');
    expect(nextPoint(POINTS, 'middle', 'End')).toBe('high right');
    expect(nextPoint(POINTS, 'middle', 'a')).toBeUndefined();
  });
});
