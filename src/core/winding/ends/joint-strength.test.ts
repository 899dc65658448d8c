import { describe, expect, it } from 'vitest';
import { seededChance } from '../../foundation/index.js';
import { censoredMean } from './censored-normal.js';
import type { EndPull } from './end-pull.js';
import { jointStrength } from './joint-strength.js';
import { piecesToPull } from './pieces-to-pull.js';

const PROOF = 0.65;
const pull = (share: number, came: EndPull['came'] = 'held'): EndPull => ({
  forceN: share * 100,
  leastBreakingN: 100,
  came,
});
const held = (count: number, share = PROOF) => Array.from({ length: count }, () => pull(share));

describe('what pull tests say', () => {
  it('is nothing before the first', () => {
    expect(jointStrength([], PROOF)).toEqual({ tried: 0, good: 0, goodInARow: 0 });
  });

  it('leaves out a pull that was let go too early, and counts one at the proof force to a tenth of a newton', () => {
    expect(jointStrength([pull(0.5), pull(0.6495)], PROOF)).toMatchObject({ tried: 1, good: 1 });
  });

  it('counts a wire that broke early against the string, wherever it broke', () => {
    const joint = jointStrength([...held(4), pull(0.5, 'in-length'), ...held(2)], PROOF);
    expect(joint).toMatchObject({ tried: 7, good: 6, goodInARow: 2 });
  });

  it('needs 59 for a statement about 95 in 100, and says less before', () => {
    expect(jointStrength(held(58), PROOF).atLeast).toMatchObject({ isEnough: false });
    const enough = jointStrength([...held(58), pull(0.9, 'at-twist')], PROOF).atLeast!;
    expect(enough).toMatchObject({ isEnough: true, share: PROOF });
    expect(enough.coverage).toBeGreaterThan(0.95);
  });

  it('gives no strength of the middle end while too few gave way', () => {
    expect(
      jointStrength([...held(40), pull(0.8, 'slipped'), pull(0.9, 'at-twist')], PROOF),
    ).not.toHaveProperty('efficiency');
  });

  it('finds the strength from which ends were drawn, though most were let go before they gave way', () => {
    const chance = seededChance(11);
    const normal = () => Math.sqrt(-2 * Math.log(1 - chance.next())) * Math.cos(2 * Math.PI * chance.next());
    const pulls = Array.from({ length: 120 }, (_, at): EndPull => {
      const strength = 0.86 * Math.exp(0.06 * normal());
      const isToBreak = at % 4 === 0;
      return isToBreak || strength < PROOF ? pull(strength, 'at-twist') : pull(PROOF);
    });
    const { efficiency } = jointStrength(pulls, PROOF);
    expect(efficiency).toBeDefined();
    expect(efficiency!.low).toBeLessThan(0.86);
    expect(efficiency!.high).toBeGreaterThan(0.86);
    expect(efficiency!.high - efficiency!.low).toBeLessThan(0.06);
  });

  it('takes a wire that broke along its length for an end that is stronger', () => {
    const gave = [0.84, 0.86, 0.88].map((share) => pull(share, 'at-twist'));
    const stronger = [1.05, 1.06, 1.07, 1.08].map((share) => pull(share, 'in-length'));
    const alone = jointStrength(gave, PROOF).efficiency!;
    expect(jointStrength([...gave, ...stronger], PROOF).efficiency!.middle).toBeGreaterThan(
      alone.middle + 0.05,
    );
  });

  it('holds the truth in nine of ten shops, as often as it says', () => {
    const chance = seededChance(23);
    const normal = () => Math.sqrt(-2 * Math.log(1 - chance.next())) * Math.cos(2 * Math.PI * chance.next());
    const prior = { mean: { value: Math.log(0.9), u: 0.3 }, logSpread: { value: Math.log(0.08), u: 0.7 } };
    let inside = 0;
    const shops = 100;
    for (let shop = 0; shop < shops; shop++) {
      const mean = prior.mean.value + prior.mean.u * normal();
      const spread = Math.exp(prior.logSpread.value + prior.logSpread.u * normal());
      const strengths = Array.from({ length: 15 }, () => mean + spread * normal());
      const stop = mean + spread / 2;
      const found = censoredMean(
        {
          seen: strengths.filter((each) => each <= stop),
          higherThan: [{ reading: stop, times: strengths.filter((each) => each > stop).length }],
        },
        prior,
        0.9,
      );
      if (found.low <= mean && mean <= found.high) inside++;
    }
    // Of 100 shops 90 in the mean, with a standard deviation of 3: within three of them.
    expect(inside).toBeGreaterThan(81);
    expect(inside).toBeLessThan(99);
  });
});

describe('how many ends to pull', () => {
  it('is three while little is known, one once it is shown, five after a failure; never more than there are', () => {
    expect(piecesToPull(40)).toMatchObject({ pieces: 3, why: 'no-record' });
    expect(piecesToPull(40, jointStrength([], PROOF))).toMatchObject({ pieces: 3, why: 'not-shown-yet' });
    expect(piecesToPull(40, jointStrength(held(59), PROOF))).toMatchObject({ pieces: 1, why: 'shown' });
    const failed = jointStrength([...held(80), pull(0.5, 'slipped'), ...held(4)], PROOF);
    expect(piecesToPull(40, failed)).toMatchObject({ pieces: 5, why: 'one-gave-way', goodInARow: 4 });
    expect(piecesToPull(2, failed).pieces).toBe(2);
  });
});
