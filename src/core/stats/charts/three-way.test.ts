import { describe, expect, it } from 'vitest';
import { seededChance } from '../../foundation/index.js';
import { normalBelow } from '../distributions/normal.js';
import { normalDraw } from '../distributions/normal-draw.js';
import { meanOf } from '../moments.js';
import { meanLimits, outside } from './control-limits.js';
import { threeWay } from './three-way.js';

describe('strings measured at three places', () => {
  const chance = seededChance(20);
  const strings = Array.from({ length: 3000 }, () => {
    const string = 3 * normalDraw(chance);
    return [0, 0, 2].map((taper) => string + taper + normalDraw(chance));
  });
  const found = threeWay(strings);
  if (!found.ok) throw new Error(found.fault.code);
  const bases = found.value;

  it('are told apart by their means, spread sqrt(9 + 1/3)', () => {
    expect(bases.strings.sigma / Math.sqrt(9 + 1 / 3)).toBeCloseTo(1, 1);
    expect(bases.taper.mean).toBeCloseTo(2, 1);
  });

  it('would signal 57 times in 100 by limits from within, and do 0.3 times by their own', () => {
    const means = strings.map(meanOf);
    const share = (signals: readonly number[]): number => signals.length / means.length;
    const byWithin = { mean: 0, sigma: 1, degrees: 1 };
    const centred = means.map((mean) => mean - 2 / 3);
    expect(2 * normalBelow(-Math.sqrt(3) / Math.sqrt(9 + 1 / 3))).toBeCloseTo(0.57, 2);
    expect(share(outside(centred, meanLimits(byWithin, 3)))).toBeCloseTo(0.57, 1);
    expect(share(outside(means, meanLimits(bases.strings)))).toBeLessThan(0.006);
  });

  it('need two strings, and as many places on each', () => {
    expect(threeWay([[1, 2, 3]])).toMatchObject({ fault: { code: 'stats.too-few', given: 1, needed: 2 } });
    expect(
      threeWay([
        [1, 2, 3],
        [2, 3],
      ]),
    ).toMatchObject({ fault: { code: 'stats.unequal-groups' } });
  });
});
