import { fail, type Result, succeed } from '../foundation/index.js';
import type { Pitch } from './pitch.js';
import { type NoteClass, noteClassOf } from './pitch-name.js';
import type { UnitFault, UnitReading } from './unit-fault.js';

/** A note as written: with its octave it is a pitch, without it only a place in the octave. */
export type NoteReading =
  | { readonly octaveGiven: true; readonly pitch: Pitch }
  | { readonly octaveGiven: false; readonly noteClass: NoteClass; readonly cents: number };

/** MIDI note numbers (MIDI 1.0): all that a note with an octave may be; wider than any string. */
export const MIDI_RANGE = { least: 0, most: 127 } as const;

/** An offset of a semitone or more is another note. */
const MOST_CENTS = 100;

const SEMITONES_ABOVE_C: Readonly<Record<string, number>> = { C: 0, D: 2, E: 4, F: 5, G: 7, A: 9, B: 11 };

const SEMITONES_OF_ACCIDENTAL: Readonly<Record<string, number>> = {
  '': 0,
  '#': 1,
  '##': 2,
  x: 2,
  b: -1,
  bb: -2,
};

// A flat is a small b: a capital one may be the next note.
const FORM =
  /^(?<letter>[A-Ha-h])(?<accidental>##|#|x|bb|b|B|)(?<octave>-?\d{1,3})?(?: ?(?<sign>[+-]) ?(?<size>\d{1,4}(?:[.,]\d+)?) ?(?:c|ct|cents?|¢))?$/;

/**
 * A note: letter, accidental (# b x ## bb, or their signs in Unicode), octave with C4 as middle C, and an offset
 * in cents: `E4`, `e4`, `F#3`, `G♭2`, `Cb4` (which is B3), `D`, `A2 +12 c`. The octave may be left out. `H` is
 * refused and B offered: where H is in use, B means B flat, and a text does not tell where it was written. `EB` is
 * refused and Eb offered: it may be two notes.
 */
export function parsePitch(text: string): Result<NoteReading, UnitFault> {
  const refuse = (code: UnitFault['code'], readings: readonly UnitReading[] = []) =>
    fail<UnitFault>({ code, text: text.trim(), expected: 'pitch', readings });
  const parts = FORM.exec(plainCharacters(text))?.groups;
  if (!parts) return refuse('unit.unreadable');
  const { letter = '', accidental = '', octave, sign, size = '0' } = parts;
  const letterMeant = letter.toUpperCase() === 'H' ? 'B' : letter.toUpperCase();
  const accidentalMeant = accidental === 'B' ? 'b' : accidental;
  const semitones = SEMITONES_ABOVE_C[letterMeant]! + SEMITONES_OF_ACCIDENTAL[accidentalMeant]!;
  const reading = noteOf({ semitones, octave, write: `${letterMeant}${accidentalMeant}${octave ?? ''}` });
  if (!reading.plausible) return refuse('unit.out-of-range', [reading]);
  if (letterMeant !== letter.toUpperCase() || accidentalMeant !== accidental) {
    return refuse('unit.unreadable', [reading]);
  }
  // Adding zero turns -0 into 0.
  const cents = Number(size.replace(',', '.')) * (sign === '-' ? -1 : 1) + 0;
  if (Math.abs(cents) >= MOST_CENTS) return refuse('unit.out-of-range');
  return succeed(
    reading.unit === 'midi'
      ? { octaveGiven: true, pitch: { midi: reading.value, cents } }
      : { octaveGiven: false, noteClass: noteClassOf(reading.value), cents },
  );
}

interface WrittenNote {
  readonly semitones: number;
  readonly octave: string | undefined;
  readonly write: string;
}

/**
 * C4 is MIDI note 60. The octave is the letter's own: Cb4 lies a semitone below C4, in what is otherwise called
 * octave 3.
 */
function noteOf({ semitones, octave, write }: WrittenNote): UnitReading {
  if (octave === undefined) {
    return { value: noteClassOf(semitones), unit: 'note-class', write, plausible: true };
  }
  const midi = 12 * (Number(octave) + 1) + semitones;
  return { value: midi, unit: 'midi', write, plausible: midi >= MIDI_RANGE.least && midi <= MIDI_RANGE.most };
}

const SUBSCRIPTS = '₀₁₂₃₄₅₆₇₈₉';

const plainCharacters = (text: string): string =>
  text
    .replaceAll('𝄪', '##')
    .replaceAll('𝄫', 'bb')
    .replaceAll('♯', '#')
    .replaceAll('♭', 'b')
    .replaceAll('♮', '')
    .replaceAll('\u2212', '-')
    .replace(/[₀-₉]/g, (figure) => String(SUBSCRIPTS.indexOf(figure)))
    .replace(/\s+/g, ' ')
    .trim();
