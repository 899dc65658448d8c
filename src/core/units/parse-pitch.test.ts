import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MIDI_RANGE, parsePitch } from './parse-pitch.js';
import { pitchName } from './pitch-name.js';

describe('a note with its octave', () => {
  it.each([
    ['E4', 64],
    ['e4', 64],
    ['E2', 40],
    ['C4', 60],
    ['C-1', 0],
    ['G9', 127],
    ['F#3', 54],
    ['F♯3', 54],
    ['Gb2', 42],
    ['G♭2', 42],
    ['Cb4', 59],
    ['B#3', 60],
    ['E#4', 65],
    ['Fb4', 64],
    ['F##2', 43],
    ['Fx2', 43],
    ['C𝄪4', 62],
    ['bb2', 46],
    ['Bbb2', 45],
    ['B𝄫2', 45],
    ['D♮3', 50],
    ['A₂', 45],
    [' E4 ', 64],
  ])('%j is MIDI %d', (text, midi) => {
    expect(parsePitch(text)).toEqual({ ok: true, value: { octaveGiven: true, pitch: { midi, cents: 0 } } });
  });

  it.each([
    ['A2 +12 c', 12],
    ['A2+12c', 12],
    ['A2 −3.5 cents', -3.5],
    ['A2 -3,5 ct', -3.5],
  ])('%j stands %d cents off', (text, cents) => {
    expect(parsePitch(text)).toEqual({ ok: true, value: { octaveGiven: true, pitch: { midi: 45, cents } } });
  });
});

describe('a note without its octave', () => {
  it.each([
    ['D', 2],
    ['d', 2],
    ['b', 11],
    ['bb', 10],
    ['Cb', 11],
    ['B#', 0],
    ['F♯', 6],
    ['Abb', 7],
  ])('%j is a place in the octave', (text, noteClass) => {
    expect(parsePitch(text)).toEqual({ ok: true, value: { octaveGiven: false, noteClass, cents: 0 } });
  });
});

describe('a text that is no note', () => {
  it('H is refused and B offered, since B means B flat where H is in use', () => {
    expect(parsePitch('h3')).toEqual({
      ok: false,
      fault: {
        code: 'unit.unreadable',
        text: 'h3',
        expected: 'pitch',
        readings: [{ value: 59, unit: 'midi', write: 'B3', plausible: true }],
      },
    });
  });

  it('EB may be E flat or two notes: it is refused and Eb offered', () => {
    expect(parsePitch('EB')).toMatchObject({
      ok: false,
      fault: { code: 'unit.unreadable', readings: [{ value: 3, unit: 'note-class', write: 'Eb' }] },
    });
  });

  it.each(['', 'I4', 'E4 +12', 'E 4', 'Es', 'do', '440', 'E#b4', 'Ebbb', 'E4E4', "e'"])(
    '%j cannot be read',
    (text) => {
      expect(parsePitch(text)).toMatchObject({ ok: false, fault: { code: 'unit.unreadable' } });
    },
  );

  it.each(['G#9', 'E44', 'E-2', 'E4 +100 c', 'Cb-1'])('%j is out of range', (text) => {
    expect(parsePitch(text)).toMatchObject({ ok: false, fault: { code: 'unit.out-of-range' } });
  });
});

describe('the name of a pitch', () => {
  it('is shown with sharps, octave and cents', () => {
    expect(pitchName({ midi: 64, cents: 0 })).toBe('E4');
    expect(pitchName({ midi: 54, cents: 12 })).toBe('F#3 +12 c');
    expect(pitchName({ midi: 45, cents: -3.5 })).toBe('A2 −3.5 c');
    expect(pitchName({ midi: 45, cents: -0.01 })).toBe('A2');
    expect(pitchName({ midi: 4, cents: 0 })).toBe('E−1');
  });

  it('reads back as the pitch', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: MIDI_RANGE.least, max: MIDI_RANGE.most }),
        fc.integer({ min: -999, max: 999 }),
        (midi, tenths) => {
          const pitch = { midi, cents: tenths / 10 };
          expect(parsePitch(pitchName(pitch))).toEqual({ ok: true, value: { octaveGiven: true, pitch } });
        },
      ),
    );
  });

  it('a note named with its neighbour and an accidental is the same note', () => {
    for (const [one, other] of [
      ['C#4', 'Db4'],
      ['E4', 'Fb4'],
      ['B3', 'Cb4'],
      ['G4', 'F##4'],
      ['A4', 'Bbb4'],
    ] as const) {
      expect(parsePitch(one)).toEqual(parsePitch(other));
    }
  });
});
