import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fanGeometry, fanScaleLengthsM, fretDistanceM } from './fan.js';

const lengths = fc.double({ min: 0.5, max: 0.9, noNaN: true });

describe('a fan', () => {
  it('grows linearly from treble to bass', () => {
    expect(fanScaleLengthsM({ trebleM: 0.648, bassM: 0.698, count: 6 })).toEqual(
      [0.648, 0.658, 0.668, 0.678, 0.688, 0.698].map((lengthM) => expect.closeTo(lengthM, 12)),
    );
    expect(fanScaleLengthsM({ trebleM: 0.648, bassM: 0.698, count: 1 })).toEqual([0.648]);
  });

  it('goes by the place of each string where they are not evenly spaced', () => {
    const fan = fanScaleLengthsM({ trebleM: 0.6, bassM: 0.7, count: 3, stringPlacesM: [0, 0.01, 0.04] });
    expect(fan[1]).toBeCloseTo(0.625, 12);
  });

  it('has the length of each string between its nut and its saddle, and its straight fret on one line', () => {
    fc.assert(
      fc.property(lengths, lengths, fc.integer({ min: 0, max: 24 }), (trebleM, bassM, straightFret) => {
        const scaleLengthsM = fanScaleLengthsM({ trebleM, bassM, count: 7 });
        const { nutM, saddleM, fretsM } = fanGeometry({ scaleLengthsM, straightFret, frets: 24 });
        for (const [string, lengthM] of scaleLengthsM.entries())
          expect(saddleM[string]! - nutM[string]!).toBeCloseTo(lengthM, 12);
        const straight = straightFret === 0 ? nutM : fretsM[straightFret - 1]!;
        for (const place of straight) expect(place).toBeCloseTo(0, 12);
      }),
    );
  });

  it('has straight frets: every fret lies on the line through its ends', () => {
    const stringPlacesM = [0, 0.009, 0.02, 0.0305, 0.0415, 0.053];
    const scaleLengthsM = fanScaleLengthsM({ trebleM: 0.64, bassM: 0.7, count: 6, stringPlacesM });
    for (const fret of fanGeometry({ scaleLengthsM, straightFret: 7, frets: 24 }).fretsM) {
      const lean = (fret.at(-1)! - fret[0]!) / stringPlacesM.at(-1)!;
      for (const [string, place] of fret.entries())
        expect(place).toBeCloseTo(fret[0]! + lean * stringPlacesM[string]!, 12);
    }
  });

  it('has its twelfth fret half way to the saddle', () => {
    expect(fretDistanceM(0.648, 12)).toBeCloseTo(0.324, 15);
  });
});
