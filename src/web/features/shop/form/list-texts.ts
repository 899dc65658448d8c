import { type Pitch, parseLength, parsePitch, pitchName } from '../../../../core/units/index.js';
import type { DialRow, PullRow } from '../../../../core/winding/index.js';

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

/** Rows of a tension scale: a line each, the number and its pull in N. Undefined where a line is none. */
export function readPullRows(text: string): readonly PullRow[] | undefined {
  const rows = linesOf(text).map((line) => {
    const [, dial, pull] = /^(-?\d+(?:[.,]\d+)?)\s+(\d+(?:[.,]\d+)?)$/.exec(line) ?? [];
    return dial === undefined || pull === undefined ? undefined : { dial: figure(dial), pullN: figure(pull) };
  });
  return rows.length >= 2 && rows.every((row) => row !== undefined && row.pullN > 0)
    ? (rows as PullRow[])
    : undefined;
}

export const writePullRows = (rows: readonly PullRow[]): string =>
  rows.map(({ dial, pullN }) => `${dial}  ${pullN}`).join('\n');

/** Places of dampers in mm from the support, with blanks between, as they stand: ascending. Undefined where one is none. */
export function readPlaces(text: string): readonly number[] | undefined {
  const places = text.split(/[\s;]+/).filter((each) => each !== '');
  if (places.length === 0 || !places.every((each) => /^\d+(?:[.,]\d+)?$/.test(each))) return undefined;
  return places.map((each) => Number((figure(each) / 1000).toPrecision(12))).toSorted((a, b) => a - b);
}

export const writePlaces = (placesM: readonly number[]): string =>
  placesM.map((placeM) => Number((placeM * 1000).toPrecision(7))).join('  ');

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
