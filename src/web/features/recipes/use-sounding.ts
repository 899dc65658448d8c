import { useState } from 'react';
import type { BodyOf } from '../../../contract/index.js';
import { type SeatModel, type Sounding, stringBody } from '../../../core/string/index.js';
import {
  frequencyHz,
  nearestPitch,
  type Pitch,
  parseLength,
  parsePitch,
  pitchName,
} from '../../../core/units/index.js';
import { useSight } from '../../sight/sight.js';

/** Where and at which note a recipe is looked at. */
export interface ChosenSounding {
  readonly scale: string;
  readonly note: string;
  readonly setScale: (text: string) => void;
  readonly setNote: (text: string) => void;
  readonly isScaleRead: boolean;
  readonly isNoteRead: boolean;
  /** The note that stands in where none is given. */
  readonly usual: Pitch | undefined;
  /** Undefined where there is nothing yet that could sound, or the texts cannot be read. */
  readonly sounding: (Sounding & { readonly pitch: Pitch }) | undefined;
}

/** A middling pull: our own choice, for a first look only. */
const USUAL_PULL_N = 75;

export function useSounding(body: BodyOf<'recipe'> | undefined, seat: SeatModel | undefined): ChosenSounding {
  const { sight } = useSight();
  const [scale, setScale] = useState(sight.length === 'in' ? '25.5 in' : '648 mm');
  const [note, setNote] = useState('');
  const length = parseLength(scale);
  const read = parsePitch(note);
  const usual = body && length.ok ? usualPitch(body, seat, length.value) : undefined;
  const isNoteRead = note.trim() === '' || (read.ok && read.value.octaveGiven);
  const pitch = read.ok && read.value.octaveGiven ? read.value.pitch : isNoteRead ? usual : undefined;
  return {
    scale,
    note,
    setScale,
    setNote,
    isScaleRead: length.ok,
    isNoteRead,
    usual,
    sounding:
      pitch && length.ok
        ? { pitch, frequencyHz: frequencyHz(pitch), speakingLengthM: length.value }
        : undefined,
  };
}

/** The note of twelve nearest to where the string pulls about as strings usually do. */
function usualPitch(
  { construction }: BodyOf<'recipe'>,
  seat: SeatModel | undefined,
  speakingLengthM: number,
): Pitch | undefined {
  const made = stringBody(construction, seat);
  if (!made.ok) return undefined;
  const sounding = Math.sqrt(USUAL_PULL_N / made.value.linearDensityKgPerM) / (2 * speakingLengthM);
  return { midi: nearestPitch(sounding).midi, cents: 0 };
}

export const noteInWords = (pitch: Pitch): string => pitchName(pitch);
