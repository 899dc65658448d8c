import { fail, type Result, succeed } from '../foundation/index.js';
import { fanScaleLengthsM, type Instrument } from '../sets/index.js';
import { parseLength } from '../units/index.js';
import type { Catalogue } from './catalogue.js';
import type { CellReader } from './cell-reader.js';
import type { Column } from './columns.js';
import { calledBy, mostLike } from './likeness.js';
import type { OrderFault } from './resolved.js';

/**
 * The shop's instrument that the cell names; undefined where the cell is empty. The beginning of a name is enough
 * where it names one alone, or where one alone of those has the scale that is given beside it.
 */
export function readNamedInstrument(
  cell: CellReader,
  { instruments }: Catalogue,
): Result<Instrument | undefined, OrderFault> {
  const text = cell.text('instrument');
  if (text === '') return succeed(undefined);
  const called = calledBy(text, instruments);
  const [meant, another] = called.length > 1 ? ofScale(called, cell.text('scale')) : called;
  if (meant && !another) return succeed(meant);
  const nearest =
    called.length > 0
      ? called.map(({ name }) => name)
      : mostLike(
          text,
          instruments.map(({ name }) => name),
        );
  return fail(cell.fault('instrument', 'order.instrument-unknown', { nearest, meant: called.length }));
}

/** Those whose scale lengths are just the given ones. */
const ofScale = (instruments: readonly Instrument[], text: string): readonly Instrument[] =>
  instruments.filter(({ scaleLengthsM }) => {
    const given = readScales(text, scaleLengthsM.length);
    return (
      given.ok &&
      given.value.every((lengthM, at) => Math.abs(lengthM - (scaleLengthsM[at] ?? 0)) < SAME_SCALE_M)
    );
  });

/** A twentieth of a millimetre, below what a scale is told to: inches and millimetres of one scale are one. */
const SAME_SCALE_M = 5e-5;

export interface ScaledQuestion {
  /** Where the scale stands. */
  readonly column: Column;
  /** The instrument whose scale holds where that cell is empty. */
  readonly base: Instrument | undefined;
  /** How many strings there are, and which column says so. */
  readonly count: number;
  readonly countedIn: Column;
}

/** The instrument named, with the scale column over it where that is filled. */
export function readScaled(
  cell: CellReader,
  { column, base, count, countedIn }: ScaledQuestion,
): Result<Instrument, OrderFault> {
  const text = cell.text(column);
  if (text !== '') {
    const scales = readScales(text, count);
    if (scales.ok) return succeed({ name: base?.name ?? `${count} strings`, scaleLengthsM: scales.value });
    const code = scales.fault.code === 'ambiguous' ? 'order.cell-ambiguous' : 'order.cell-unreadable';
    return fail(
      cell.fault(column, code, { expected: 'scale', strings: count, readings: scales.fault.readings }),
    );
  }
  if (!base) return fail(cell.fault(column, 'order.cell-empty', { neededFor: 'request' }));
  const { name, scaleLengthsM } = base;
  if (scaleLengthsM.length === count) return succeed(base);
  return fail(
    cell.fault(countedIn, 'order.strings-do-not-match', {
      instrument: name,
      strings: scaleLengthsM.length,
      given: count,
    }),
  );
}

export interface ScaleFault {
  readonly code: 'unreadable' | 'ambiguous' | 'out-of-range' | 'wrong-count';
  readonly readings: readonly string[];
}

/**
 * Scale lengths of every string, treble first, from a cell: one length for all (`25.5 in`), two for a fan
 * (`25.5-27 in`, shorter side to the treble, linear between), or one a string apart by commas.
 */
export function readScales(text: string, count: number): Result<readonly number[], ScaleFault> {
  const parts = splitScales(text);
  const lengths: number[] = [];
  for (const part of parts) {
    const read = parseLength(part);
    if (!read.ok)
      return fail({
        code:
          read.fault.code === 'unit.ambiguous'
            ? 'ambiguous'
            : read.fault.code === 'unit.out-of-range'
              ? 'out-of-range'
              : 'unreadable',
        readings: read.fault.readings.map((reading) => reading.write),
      });
    lengths.push(read.value);
  }
  const [first, second] = lengths;
  if (first === undefined) return fail({ code: 'unreadable', readings: [] });
  if (lengths.length === 1) return succeed(Array.from({ length: count }, () => first));
  if (lengths.length === 2 && second !== undefined)
    return succeed(
      fanScaleLengthsM({ trebleM: Math.min(first, second), bassM: Math.max(first, second), count }),
    );
  return lengths.length === count ? succeed(lengths) : fail({ code: 'wrong-count', readings: [] });
}

/** A unit after the last length serves them all: `25.5-27 in` is 25.5 in and 27 in. */
function splitScales(text: string): readonly string[] {
  const parts = text
    .trim()
    .split(/\s*(?:,\s|;|–|-|\bto\b)\s*/i)
    .filter((part) => part !== '');
  const unit = /[a-z"″”]+\s*$/i.exec(parts.at(-1) ?? '')?.[0] ?? '';
  return parts.map((part) => (/[a-z"″”]\s*$/i.test(part) ? part : `${part} ${unit}`.trim()));
}
