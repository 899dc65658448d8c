import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { carriedTo } from './carry-feel.js';
import type { Instrument } from './instrument.js';
import { type LikedSet, type TargetWish, targetsFor } from './set-targets.js';
import { usualTuning } from './usual-tunings.js';

const guitar = (count: number, lengthM = 0.648): Instrument => ({
  name: `${count} strings`,
  scaleLengthsM: Array.from({ length: count }, () => lengthM),
});
const strings = [0.0004, 0.00067, 0.00115, 0.0024, 0.0045, 0.0068].map((linearDensityKgPerM, index) => ({
  linearDensityKgPerM,
  axialStiffnessN: 10_000 + 2000 * index,
}));
const liked: LikedSet = { instrument: guitar(6), tuning: usualTuning(6)!, strings };

const targets = (wish: TargetWish, count = 6, likedSet: LikedSet | undefined = liked) => {
  const answer = targetsFor({
    instrument: guitar(count),
    tuning: usualTuning(count)!,
    wish,
    ...(likedSet ? { liked: likedSet } : {}),
  });
  if (!answer.ok) throw new Error(JSON.stringify(answer.fault));
  return answer.value;
};
const pulls = (wish: TargetWish, count = 6) =>
  targets(wish, count).positions.map(({ targetTensionN }) => targetTensionN);
const faultOf = (wish: TargetWish, likedSet?: LikedSet) => {
  const answer = targetsFor({
    instrument: guitar(6),
    tuning: usualTuning(6)!,
    wish,
    ...(likedSet ? { liked: likedSet } : {}),
  });
  if (answer.ok) throw new Error('expected a fault');
  return answer.fault;
};

describe('the feel of a liked set', () => {
  it('on its own instrument and tuning is its own pulls', () => {
    const frequencies = [329.6276, 246.9417, 195.9977, 146.8324, 110, 82.4069];
    pulls({ target: 'feel' }).forEach((pull, index) => {
      expect(pull).toBeCloseTo(
        strings[index]!.linearDensityKgPerM * (2 * 0.648 * frequencies[index]!) ** 2,
        2,
      );
    });
  });

  it('asks the same pulls of another scale and tuning', () => {
    const lower = targetsFor({
      instrument: guitar(6, 0.686),
      tuning: {
        pitches: usualTuning(6)!.pitches.map(({ midi }) => ({ midi: midi - 2, cents: 0 })),
        referenceHz: 440,
      },
      wish: { target: 'feel' },
      liked,
    });
    const moved = lower.ok ? lower.value.positions.map(({ targetTensionN }) => targetTensionN) : [];
    expect(moved).toEqual(pulls({ target: 'feel' }));
  });

  it('is a bend force too, and the blend weighs the two', () => {
    const { positions, weights } = targets({ target: 'feel', bendShare: 0.3 });
    expect(positions.every(({ targetBendForceN }) => targetBendForceN! > 1)).toBe(true);
    expect(weights.pull).toBeCloseTo(0.7, 12);
    expect(weights.bend).toBeCloseTo(0.3, 12);
  });

  it("goes to both strings of a twelve-string's course, and back", () => {
    const feel = [80, 70, 75, 82, 88, 78].map((pullN) => ({ pullN, bendN: undefined }));
    expect(carriedTo(feel, 12).map(({ pullN }) => pullN)).toEqual([
      80, 80, 70, 70, 75, 75, 82, 82, 88, 88, 78, 78,
    ]);
    expect(carriedTo(carriedTo(feel, 12), 6)).toEqual(feel);
  });

  it('carries its trend on to bass strings that it does not have', () => {
    const rising = Array.from({ length: 6 }, (_, index) => ({
      pullN: 60 * 1.05 ** index,
      bendN: 8 * 0.97 ** index,
    }));
    const eight = carriedTo(rising, 8);
    expect(eight.slice(0, 6)).toEqual(rising);
    expect(eight[7]!.pullN).toBeCloseTo(60 * 1.05 ** 7, 9);
    expect(eight[7]!.bendN).toBeCloseTo(8 * 0.97 ** 7, 9);
  });

  it('does not carry on the zigzag of its last step', () => {
    const zigzag = [80, 70, 80, 70, 80, 70].map((pullN) => ({ pullN, bendN: undefined }));
    expect(carriedTo(zigzag, 7)[6]!.pullN).toBeGreaterThan(66);
  });

  it('on fewer strings keeps those from the treble', () => {
    const feel = [80, 70, 75, 82, 88].map((pullN) => ({ pullN, bendN: undefined }));
    expect(carriedTo(feel, 4)).toEqual(feel.slice(0, 4));
  });
});

describe('other wishes', () => {
  it("even is one pull for all: that given, or the liked set's average", () => {
    expect(pulls({ target: 'even', pullsN: [75] })).toEqual([75, 75, 75, 75, 75, 75]);
    const average = pulls({ target: 'feel' }).reduce((sum, pull) => sum + pull, 0) / 6;
    for (const pull of pulls({ target: 'even' })) expect(pull).toBeCloseTo(average, 9);
  });

  it('graded grows by its share from string to string, from the treble pull given', () => {
    fc.assert(
      fc.property(fc.double({ min: -0.1, max: 0.1, noNaN: true }), (gradePerString) => {
        const graded = pulls({ target: 'graded', pullsN: [70], gradePerString });
        expect(graded[0]).toBeCloseTo(70, 9);
        for (const [index, pull] of graded.slice(1).entries())
          expect(pull / graded[index]!).toBeCloseTo(1 + gradePerString, 9);
      }),
    );
  });

  it('free is as given', () => {
    expect(pulls({ target: 'free', pullsN: [70, 71, 72, 73, 74, 75] })).toEqual([70, 71, 72, 73, 74, 75]);
  });

  it('heavier basses and trebles raise their own side by their share', () => {
    expect(pulls({ target: 'even', pullsN: [100], heavierBass: 0.05 })).toEqual([
      100, 100, 100, 105, 105, 105,
    ]);
    expect(pulls({ target: 'even', pullsN: [100], heavierTreble: 0.1 }).map(Math.round)).toEqual([
      110, 110, 110, 100, 100, 100,
    ]);
    expect(pulls({ target: 'even', pullsN: [100], heavierBass: 0.05 }, 4)).toEqual([100, 100, 105, 105]);
    expect(pulls({ target: 'even', pullsN: [100], heavierBass: 0.05 }, 12).slice(5, 7)).toEqual([100, 105]);
  });
});

describe('a wish that cannot be read as pulls', () => {
  it('says what is missing', () => {
    expect(faultOf({ target: 'feel' })).toEqual({ code: 'target.liked-set-missing' });
    expect(faultOf({ target: 'even' })).toEqual({ code: 'target.pulls-missing', target: 'even' });
    expect(faultOf({ target: 'graded', pullsN: [70] })).toEqual({ code: 'target.grade-missing' });
    expect(faultOf({ target: 'free', pullsN: [70, 71] })).toEqual({
      code: 'target.pulls-count',
      expected: 6,
      given: 2,
    });
    expect(faultOf({ target: 'feel' }, { ...liked, strings: strings.slice(1) })).toEqual({
      code: 'target.strings-do-not-match',
      of: 'liked-strings',
      expected: 6,
      given: 5,
    });
  });
});
