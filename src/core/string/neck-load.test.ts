import { describe, expect, it } from 'vitest';
import { neckLoad } from './neck-load.js';

const pulls = (...tensions: number[]) => tensions.map((tensionN) => ({ tensionN }));

describe('the load on a neck', () => {
  it('is the sum of the pulls', () => {
    expect(neckLoad(pulls(72, 68, 74, 80, 84, 78))).toEqual({ totalN: 456 });
  });

  it('is told against the set the neck was adjusted to', () => {
    const load = neckLoad(pulls(60, 60), pulls(50, 50));
    expect(load).toEqual({ totalN: 120, changeN: 20, changeShare: 0.2 });
    expect(neckLoad(pulls(40), pulls(50)).changeN).toBe(-10);
  });
});
