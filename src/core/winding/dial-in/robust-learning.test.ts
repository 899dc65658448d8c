import { describe, expect, it } from 'vitest';
import { type Belief, learn, processError } from './belief.js';
import { learnRobustly } from './robust-learning.js';

const belief: Belief = {
  referenceSettings: [0],
  mean: [0, 1],
  covariance: [
    [1, 0],
    [0, 0.01],
  ],
};
const seen = (errorM: number) => ({ position: 0, setting: 0, errorM, varianceM2: 1 });
const believedFrom = (how: typeof learn, errorM: number) => processError(how(belief, seen(errorM)), 0, 0);

describe('learning from strings that may go astray', () => {
  it('is the plain filter for a string near what was expected', () => {
    expect(believedFrom(learnRobustly, 0.5).value).toBeCloseTo(believedFrom(learn, 0.5).value, 12);
  });

  it('believes a string the less, the further it is away', () => {
    const believed = [3, 6, 12, 24].map((errorM) => believedFrom(learnRobustly, errorM).value / errorM);
    expect(believed[0]).toBeLessThan(0.5);
    for (const [index, share] of believed.slice(1).entries()) expect(share).toBeLessThan(believed[index]!);
    expect(believedFrom(learnRobustly, 24).value).toBeLessThan(believedFrom(learn, 24).value / 4);
  });
});
