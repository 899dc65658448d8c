import { fail, type Result, succeed } from '../foundation/index.js';
import { fanScaleLengthsM } from '../sets/index.js';
import { parseLength } from '../units/index.js';

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
