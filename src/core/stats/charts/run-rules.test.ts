import { describe, expect, it } from 'vitest';
import { NELSON_RULES, patternBegins } from './run-rules.js';

describe('where a pattern begins', () => {
  it('a run goes back to the point that crossed the centre, however long it has gone on', () => {
    const z = [-0.2, ...Array.from({ length: 12 }, () => 0.5)];
    expect(patternBegins(z, 12, NELSON_RULES[1])).toBe(1);
    expect(patternBegins(z, 9, NELSON_RULES[1])).toBe(1);
  });

  it('a trend goes back to its lowest point', () => {
    expect(patternBegins([0.4, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7], 7, NELSON_RULES[2])).toBe(1);
  });

  it('two of three go back to the first of the two', () => {
    expect(patternBegins([0, 2.1, 0.3, 2.4], 3, NELSON_RULES[4])).toBe(1);
    expect(patternBegins([-2.1, 0, -2.2, -2.4], 3, NELSON_RULES[4])).toBe(2);
  });

  it('one far point begins and ends with itself', () => {
    expect(patternBegins([0, 0, 3.5], 2, NELSON_RULES[0])).toBe(2);
  });
});
