import { fail, type Result, succeed } from '../foundation/index.js';
import { type NoteReading, type Pitch, parsePitch, STANDARD_REFERENCE_HZ } from '../units/index.js';
import type { Tuning } from './instrument.js';
import { usualTuning } from './usual-tunings.js';

export interface ParsedTuning {
  /** Treble first. */
  readonly tuning: Tuning;
  /** Whether one octave or more was taken from the usual tuning because the text has none. */
  readonly octavesAssumed: boolean;
  readonly readAs: 'low-to-high' | 'treble-first';
}

/** Why a text is no tuning. */
export type TuningFault =
  | {
      readonly code: 'tuning.unreadable';
      readonly text: string;
      /** Which note, counted from 1, and what stands there. */
      readonly note: number;
      readonly read: string;
    }
  | {
      readonly code: 'tuning.wrong-count';
      readonly text: string;
      readonly expected: number;
      readonly given: number;
    }
  | {
      /** Octaves are missing and no usual tuning of so many strings tells them. */
      readonly code: 'tuning.octaves-needed';
      readonly text: string;
      readonly given: number;
    };

/**
 * A tuning from text as players write it, LOW string first: `D A D G A D`, `DADF#AD`, `E2+5 A2 D3 G3 B3 E4`;
 * spaces, commas or dashes between, or nothing; `+5` is cents. (`Tuning.pitches` is treble first.)
 *
 * Text with all octaves that fits the usual tuning better the other way round (`E4 B3 G3 D3 A2 E2`) is taken
 * as treble first. A missing octave is the one that brings the note nearest to that string's usual pitch, the
 * lower of two as near. For twelve strings six notes will do: they name the low string of each course, and
 * its partner keeps its usual interval. `usual` left out: the usual tuning of as many strings as there are notes.
 */
export function parseTuning(text: string, usual?: Tuning): Result<ParsedTuning, TuningFault> {
  const read = readNotes(text, usual);
  if (!read.ok) return read;
  const notes = read.value;
  const like = usual ?? usualTuning(notes.length);
  const courses = like && coursesOf(like);
  if (courses && notes.length === courses.length && notes.length !== like.pitches.length)
    return byCourse(notes, like, courses);
  if (usual && notes.length !== usual.pitches.length)
    return fail({ code: 'tuning.wrong-count', text, expected: usual.pitches.length, given: notes.length });
  const octavesAssumed = notes.some((note) => !note.octaveGiven);
  if (!like && octavesAssumed) return fail({ code: 'tuning.octaves-needed', text, given: notes.length });
  const readAs = direction(notes, like);
  const trebleFirst = readAs === 'treble-first' ? notes : notes.toReversed();
  const pitches = trebleFirst.map((note, index) => settledPitch(note, like?.pitches[index]));
  const referenceHz = like?.referenceHz ?? STANDARD_REFERENCE_HZ;
  return succeed({ tuning: { pitches, referenceHz }, octavesAssumed, readAs });
}

/** Letter, accidental, octave, and cents with their sign; a dash before a letter or space is a separator. */
const NOTE =
  /(?<note>[A-Ha-h](?:##|#|♯♯|♯|𝄪|x|bb|b|♭♭|♭|𝄫|♮)?\d?)(?:\s*(?<sign>[+\-\u2212])\s*(?<cents>\d+(?:\.\d+)?)(?:\s*(?:cents?|ct|c)(?![A-Za-z#♯♭\d]))?)?/uy;
const SEPARATORS = /[\s,;|\-–—]*/uy;

/** The notes in the order of the text. */
function readNotes(text: string, usual: Tuning | undefined): Result<readonly NoteReading[], TuningFault> {
  const asWritten = notesOf(text);
  // `eadgbe`: in small letters run together, a b may be a flat or the note; the reading that gives the right number is meant.
  const isRunTogetherSmall = /^[a-h]+$/.test(text.trim());
  if (!isRunTogetherSmall) return asWritten;
  const asLetters = notesOf(text.toUpperCase());
  const fits = (read: typeof asWritten): boolean =>
    read.ok &&
    (usual ? read.value.length === usual.pitches.length : usualTuning(read.value.length) !== undefined);
  return !fits(asWritten) && fits(asLetters) ? asLetters : asWritten;
}

function notesOf(text: string): Result<readonly NoteReading[], TuningFault> {
  const notes: NoteReading[] = [];
  let at = pastSeparators(text, 0);
  while (at < text.length) {
    NOTE.lastIndex = at;
    const parts = NOTE.exec(text);
    const read = parts?.groups && noteOf(parts.groups);
    if (!read?.ok) return fail(unreadable(text, notes.length + 1, at));
    notes.push(read.value);
    at = pastSeparators(text, at + parts![0].length);
  }
  return notes.length > 0 ? succeed(notes) : fail(unreadable(text, 1, 0));
}

const noteOf = ({ note, sign, cents }: Readonly<Record<string, string | undefined>>) =>
  parsePitch(cents === undefined ? note! : `${note} ${sign === '+' ? '+' : '-'}${cents} c`);

function pastSeparators(text: string, at: number): number {
  SEPARATORS.lastIndex = at;
  return at + SEPARATORS.exec(text)![0].length;
}

const unreadable = (text: string, note: number, at: number): TuningFault => ({
  code: 'tuning.unreadable',
  text,
  note,
  read: /^[^\s,;|]*/.exec(text.slice(at))![0],
});

/** Low to high unless every octave is given and the text lies nearer to the usual tuning (or falls, where there is none) the other way. */
function direction(notes: readonly NoteReading[], like: Tuning | undefined): ParsedTuning['readAs'] {
  const midi = notes.flatMap((note) => (note.octaveGiven ? [note.pitch.midi] : []));
  if (midi.length < notes.length) return 'low-to-high';
  if (!like) return midi[0]! > midi.at(-1)! ? 'treble-first' : 'low-to-high';
  const distance = (trebleFirst: readonly number[]): number =>
    trebleFirst.reduce((sum, note, index) => sum + Math.abs(note - like.pitches[index]!.midi), 0);
  return distance(midi) < distance(midi.toReversed()) ? 'treble-first' : 'low-to-high';
}

function settledPitch(note: NoteReading, usual: Pitch | undefined): Pitch {
  if (note.octaveGiven) return note.pitch;
  const up = (((note.noteClass - usual!.midi) % 12) + 12) % 12;
  return { midi: usual!.midi + (up < 6 ? up : up - 12), cents: note.cents };
}

interface Course {
  readonly thinIndex: number;
  readonly lowIndex: number;
}

/** The courses of a twelve-string, treble first; undefined for any other tuning. */
function coursesOf(tuning: Tuning): readonly Course[] | undefined {
  if (tuning.pitches.length !== 12) return undefined;
  return Array.from({ length: 6 }, (_, course) => ({ thinIndex: 2 * course, lowIndex: 2 * course + 1 }));
}

function byCourse(
  notes: readonly NoteReading[],
  like: Tuning,
  courses: readonly Course[],
): Result<ParsedTuning, TuningFault> {
  const low: Tuning = { ...like, pitches: courses.map(({ lowIndex }) => like.pitches[lowIndex]!) };
  const readAs = direction(notes, low);
  const trebleFirst = readAs === 'treble-first' ? notes : notes.toReversed();
  const pitches = trebleFirst.flatMap((note, course) => {
    const { thinIndex, lowIndex } = courses[course]!;
    const settled = settledPitch(note, like.pitches[lowIndex]);
    const interval = like.pitches[thinIndex]!.midi - like.pitches[lowIndex]!.midi;
    return [{ ...settled, midi: settled.midi + interval }, settled];
  });
  // The partners' octaves were never written.
  return succeed({ tuning: { pitches, referenceHz: like.referenceHz }, octavesAssumed: true, readAs });
}
