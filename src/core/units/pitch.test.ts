import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { centsBetween, frequencyHz, nearestPitch, semitoneRatio } from './pitch.js';

const midi = fc.integer({ min: 0, max: 127 });
const cents = fc.double({ min: -49, max: 49, noNaN: true });
const referenceHz = fc.double({ min: 400, max: 480, noNaN: true });

describe('twelve-tone equal temperament', () => {
  it('twelve semitones double the frequency, whatever the reference', () => {
    fc.assert(
      fc.property(midi, cents, referenceHz, (note, off, reference) => {
        const lower = frequencyHz({ midi: note, cents: off }, reference);
        const upper = frequencyHz({ midi: note + 12, cents: off }, reference);
        expect(upper / lower).toBeCloseTo(2, 12);
      }),
    );
  });

  it('a hundred cents are a semitone', () => {
    expect(frequencyHz({ midi: 60, cents: 100 })).toBeCloseTo(frequencyHz({ midi: 61, cents: 0 }), 10);
    expect(semitoneRatio(7)).toBeCloseTo(1.498307, 6);
  });

  it('the cents between two pitches are the difference of their places', () => {
    fc.assert(
      fc.property(midi, cents, midi, cents, (from, fromOff, to, toOff) => {
        const interval = centsBetween(
          frequencyHz({ midi: from, cents: fromOff }),
          frequencyHz({ midi: to, cents: toOff }),
        );
        expect(interval).toBeCloseTo((to - from) * 100 + toOff - fromOff, 8);
      }),
    );
  });

  it('a frequency leads back to its note', () => {
    fc.assert(
      fc.property(midi, cents, referenceHz, (note, off, reference) => {
        const pitch = nearestPitch(frequencyHz({ midi: note, cents: off }, reference), reference);
        expect(pitch.midi).toBe(note);
        expect(pitch.cents).toBeCloseTo(off, 8);
      }),
    );
  });
});
