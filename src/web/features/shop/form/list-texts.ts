import { type Pitch, parseLength, parsePitch, pitchName } from '../../../../core/units/index.js';
import type { DialRow } from '../../../../core/winding/index.js';

/** The rows of a dial table: a line each, the dial and the traverse per turn in mm. Undefined where a line is none. */
export function readDialRows(text: string): readonly DialRow[] | undefined {
  const lines = linesOf(text);
  const rows = lines.map((line) => {
    const [, dial, traverse] = /^(-?\d+(?:[.,]\d+)?)\s+(\d+(?:[.,]\d+)?)$/.exec(line) ?? [];
    if (dial === undefined || traverse === undefined) return undefined;
    return { dial: figure(dial), traversePerTurnM: Number((figure(traverse) / 1000).toPrecision(12)) };
  });
  return rows.length >= 2 && rows.every((row) => row !== undefined && row.traversePerTurnM > 0)
    ? (rows as DialRow[])
    : undefined;
}

export const writeDialRows = (rows: readonly DialRow[]): string =>
  rows
    .map(({ dial, traversePerTurnM }) => `${dial}  ${Number((traversePerTurnM * 1000).toPrecision(9))}`)
    .join('\n');

/** Scale lengths, treble first: a line each. Undefined where a line is none. */
export function readScales(text: string): readonly number[] | undefined {
  const read = linesOf(text).map((line) => parseLength(line));
  return read.length > 0 && read.every(({ ok }) => ok)
    ? read.flatMap((one) => (one.ok ? [one.value] : []))
    : undefined;
}

export const writeScales = (lengthsM: readonly number[]): string =>
  lengthsM.map((lengthM) => `${Number((lengthM * 1000).toPrecision(7))} mm`).join('\n');

/** Open strings with their octaves, treble first, with spaces between: `E4 B3 G3`. Undefined where one is none. */
export function readPitches(text: string): readonly Pitch[] | undefined {
  const read = text
    .trim()
    .split(/\s+(?=[A-Ha-h][#b♯♭x]*-?\d)/)
    .map((note) => parsePitch(note));
  const pitches = read.flatMap((one) => (one.ok && one.value.octaveGiven ? [one.value.pitch] : []));
  return pitches.length > 0 && pitches.length === read.length ? pitches : undefined;
}

export const writePitches = (pitches: readonly Pitch[]): string => pitches.map(pitchName).join(' ');

const linesOf = (text: string): readonly string[] =>
  text
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');

const figure = (text: string): number => Number(text.replace(',', '.'));
