import { formatDecimal, formatTrimmed, MINUS } from './decimal.js';
import type { Pitch } from './pitch.js';

/** Where a note stands in its octave: 0 is C, 11 is B. */
export type NoteClass = 0 | 1 | 2 | 3 | 4 | 5 | 6 | 7 | 8 | 9 | 10 | 11;

const NAMES = ['C', 'C#', 'D', 'D#', 'E', 'F', 'F#', 'G', 'G#', 'A', 'A#', 'B'] as const;

/** The note class of a MIDI note number: 69 (A4) gives 9. */
export const noteClassOf = (midi: number): NoteClass => (((midi % 12) + 12) % 12) as NoteClass;

/** Name of a note class with sharps: 6 is 'F#'. */
export const noteClassName = (noteClass: NoteClass): string => NAMES[noteClass];

/**
 * Name of a pitch with sharps and its octave, C4 being middle C, and its cents where there are any:
 * 'E4', 'F#3', 'A2 +12 c', 'A2 −3.5 c'. `parsePitch` reads it back.
 */
export function pitchName(pitch: Pitch): string {
  const note = `${noteClassName(noteClassOf(pitch.midi))}${formatDecimal(Math.floor(pitch.midi / 12) - 1, 0)}`;
  const cents = formatTrimmed(pitch.cents, 1);
  if (cents === '0') return note;
  return `${note} ${cents.startsWith(MINUS) ? '' : '+'}${cents} c`;
}
