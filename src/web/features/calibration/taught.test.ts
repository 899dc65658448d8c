import { describe, expect, it } from 'vitest';
import { estimate } from '../../../core/numeric/index.js';
import { taughtOf } from './taught.js';

describe('what strings taught of an unknown', () => {
  it('lies less, more or as believed by the doubt there was before', () => {
    const before = estimate(0.96, 0.02);
    expect(taughtOf({ before, now: estimate(0.95, 0.005) })).toEqual({
      direction: 'less',
      sharper: 4,
      isLearned: true,
    });
    expect(taughtOf({ before, now: estimate(0.97, 0.005) }).direction).toBe('more');
    expect(taughtOf({ before, now: estimate(0.963, 0.005) }).direction).toBe('as-believed');
  });

  it('is nothing where it is hardly better known than before', () => {
    expect(taughtOf({ before: estimate(0, 0.02), now: estimate(0, 0.0192) }).isLearned).toBe(false);
  });
});
