import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pitchName } from '../units/index.js';
import type { Tuning } from './instrument.js';
import { parseTuning } from './parse-tuning.js';
import { USUAL_TUNINGS, usualTuning } from './usual-tunings.js';

const six = usualTuning(6)!;
const read = (text: string, usual: Tuning = six) => {
  const answer = parseTuning(text, usual);
  if (!answer.ok) throw new Error(JSON.stringify(answer.fault));
  return answer.value;
};
const lowToHigh = (text: string, usual: Tuning = six) =>
  read(text, usual).tuning.pitches.map(pitchName).toReversed().join(' ');
const faultOf = (text: string, usual: Tuning = six) => {
  const answer = parseTuning(text, usual);
  if (answer.ok) throw new Error('expected a fault');
  return answer.fault;
};

describe('a tuning as players write it', () => {
  it('runs from low to high, and is kept treble first', () => {
    expect(read('D2 A2 D3 G3 A3 D4').tuning.pitches.map(pitchName)).toEqual([
      'D4',
      'A3',
      'G3',
      'D3',
      'A2',
      'D2',
    ]);
  });

  it('without octaves takes those nearest to the usual ones, and says so', () => {
    expect(lowToHigh('D A D G A D')).toBe('D2 A2 D3 G3 A3 D4');
    expect(read('D A D G A D').octavesAssumed).toBe(true);
    expect(read('D2 A2 D3 G3 A3 D4').octavesAssumed).toBe(false);
    expect(read('D A D G A D4').octavesAssumed).toBe(true);
  });

  it('takes the lower octave where two are as near: A# for an E', () => {
    expect(lowToHigh('A# A D G B E')).toBe('A#1 A2 D3 G3 B3 E4');
  });

  it('may stand with spaces, commas, dashes or nothing between', () => {
    for (const text of [
      'D,A,D,F#,A,D',
      'D-A-D-F#-A-D',
      'D – A – D – F♯ – A – D',
      'DADF#AD',
      'd a d f# a d',
      'dadf#ad',
    ])
      expect(lowToHigh(text)).toBe('D2 A2 D3 F#3 A3 D4');
  });

  it('tells the note b from a flat in small letters run together by how many strings there are', () => {
    expect(lowToHigh('eadgbe')).toBe('E2 A2 D3 G3 B3 E4');
    expect(lowToHigh('Eb Ab Db Gb Bb Eb')).toBe('D#2 G#2 C#3 F#3 A#3 D#4');
    expect(lowToHigh('E♭A♭D♭G♭B♭E♭')).toBe('D#2 G#2 C#3 F#3 A#3 D#4');
  });

  it('takes cents after a sign, a dash before a letter being none', () => {
    const { pitches } = read('E2+5 A2-3.5 D3 G3 −2 B3 +1 c E4').tuning;
    expect(pitches.toReversed().map(({ cents }) => cents)).toEqual([5, -3.5, 0, -2, 1, 0]);
    expect(lowToHigh('E2-A2-D3-G3-B3-E4')).toBe('E2 A2 D3 G3 B3 E4');
  });

  it('given with all octaves from the treble is known by them', () => {
    expect(read('E4 B3 G3 D3 A2 E2')).toMatchObject({ readAs: 'treble-first', octavesAssumed: false });
    expect(read('E4 B3 G3 D3 A2 E2').tuning).toEqual(read('E2 A2 D3 G3 B3 E4').tuning);
  });

  it('reads back, either way round, whatever usual tuning is written out with its octaves', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...USUAL_TUNINGS),
        fc.integer({ min: -5, max: 3 }),
        fc.boolean(),
        (usual, shift, fromTreble) => {
          const pitches = usual.pitches.map(({ midi }) => ({ midi: midi + shift, cents: 0 }));
          const names = pitches.map(pitchName);
          const text = (fromTreble ? names : names.toReversed()).join(' ');
          expect(read(text, usual).tuning.pitches).toEqual(pitches);
        },
      ),
    );
  });

  it('of a twelve-string may name its courses by their low strings', () => {
    expect(lowToHigh('D A D G B E', usualTuning(12))).toBe('D2 D3 A2 A3 D3 D4 G3 G4 B3 B3 E4 E4');
  });

  it('of a number of strings not told goes by the number of notes', () => {
    expect(parseTuning('B E A D G B E')).toMatchObject({
      value: { tuning: { pitches: { 6: { midi: 35 } } } },
    });
    expect(parseTuning('G3 C4 E4')).toMatchObject({
      value: { octavesAssumed: false, readAs: 'low-to-high' },
    });
  });

  it('keeps the reference pitch of the usual tuning', () => {
    expect(read('D A D G A D', { ...six, referenceHz: 432 }).tuning.referenceHz).toBe(432);
  });
});

describe('a text that is no tuning', () => {
  it('is answered with the note that cannot be read', () => {
    expect(faultOf('E A D Q B E')).toEqual({
      code: 'tuning.unreadable',
      text: 'E A D Q B E',
      note: 4,
      read: 'Q',
    });
    expect(faultOf('')).toMatchObject({ code: 'tuning.unreadable', note: 1 });
    expect(faultOf('E A D H B E')).toMatchObject({ code: 'tuning.unreadable', note: 4, read: 'H' });
  });

  it('with too many or too few notes says how many there should be', () => {
    expect(faultOf('E A D G B')).toMatchObject({ code: 'tuning.wrong-count', expected: 6, given: 5 });
  });

  it('without octaves for an unusual number of strings asks for them', () => {
    expect(parseTuning('E A D')).toMatchObject({ fault: { code: 'tuning.octaves-needed', given: 3 } });
  });
});
