import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ReadingOfString, stringSums } from './string-sums.js';

const reading = (changes: Partial<ReadingOfString>): ReadingOfString => ({
  trialStringId: null,
  quantity: 'diameter',
  value: 1e-3,
  placeM: 0.5,
  rotationDeg: 0,
  instrument: 'micrometer 1',
  at: '2026-03-02T08:00:00.000Z',
  ...changes,
});

describe('readings of a run, taken together', () => {
  it('give each string the mean over its places, however often each was read', () => {
    const sums = stringSums(
      [
        reading({ placeM: 0.2, value: 1e-3 }),
        reading({ placeM: 0.2, value: 1.002e-3, rotationDeg: 90 }),
        reading({ placeM: 0.8, value: 1.005e-3 }),
      ],
      new Map(),
    );
    expect(sums).toHaveLength(1);
    expect(sums[0]).toMatchObject({ strings: 1, alongDegrees: 1, readings: 3, squaresM2: 0 });
    expect(sums[0]!.meanM).toBeCloseTo(1.003e-3, 12);
    expect(sums[0]!.alongSquaresM2 * 1e12).toBeCloseTo(8, 6);
  });

  it('keep the first string apart: trial string 1 where there are trials, else whichever was measured first', () => {
    const trials = new Map([
      ['a', 2],
      ['b', 1],
    ]);
    const withTrials = stringSums(
      [
        reading({ trialStringId: 'a', value: 1e-3 }),
        reading({ trialStringId: 'b', value: 1.01e-3 }),
        reading({ value: 1.002e-3, at: '2026-03-02T09:00:00.000Z' }),
      ],
      trials,
    );
    expect(withTrials.map(({ isFirst, strings }) => [isFirst, strings])).toEqual([
      [false, 2],
      [true, 1],
    ]);
    expect(withTrials[1]!.meanM).toBe(1.01e-3);
    const without = stringSums(
      [reading({}), reading({ at: '2026-03-02T09:00:00.000Z', value: 1.1e-3 })],
      new Map(),
    );
    expect(without.map(({ isFirst, meanM }) => [isFirst, meanM])).toEqual([
      [false, 1.1e-3],
      [true, 1e-3],
    ]);
  });

  it('keep instruments apart, and diameters for which no rotation was told', () => {
    const sums = stringSums(
      [
        reading({ trialStringId: 'a' }),
        reading({ trialStringId: 'b', instrument: 'micrometer 2' }),
        reading({ trialStringId: 'c', rotationDeg: null }),
        reading({ trialStringId: 'c', quantity: 'mass', value: 6e-3, placeM: null, instrument: 'scale' }),
        reading({ trialStringId: 'd', quantity: 'mass', value: 2e-3, placeM: null, instrument: 'scale' }),
        reading({ trialStringId: 'd', quantity: 'length', value: 0.3, placeM: null, instrument: 'rule' }),
      ],
      new Map([['a', 1]]),
    );
    expect(
      sums.map(({ instrument, isFirst, isLargest, strings, weighed }) => [
        instrument,
        isFirst,
        isLargest,
        strings,
        weighed,
      ]),
    ).toEqual([
      ['micrometer 2', false, false, 1, 0],
      // A cut piece says nothing of a whole string.
      ['scale', false, false, 0, 0],
      ['micrometer 1', false, true, 1, 1],
      ['micrometer 1', true, false, 1, 0],
    ]);
  });

  it('hold the mean and the squares of the strings themselves', () => {
    const offs = fc.array(fc.integer({ min: -20, max: 20 }), { minLength: 2, maxLength: 12 });
    fc.assert(
      fc.property(offs, (micrometres) => {
        const values = micrometres.map((each) => 1e-3 + each * 1e-6);
        const readings = values.map((value, at) => reading({ trialStringId: `s${at}`, value }));
        const [sums] = stringSums(readings, new Map());
        const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
        const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
        expect(sums!.meanM).toBeCloseTo(mean, 15);
        expect(sums!.squaresM2 * 1e12).toBeCloseTo(squares * 1e12, 6);
      }),
    );
  });
});
