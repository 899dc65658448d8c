import type { Result } from '../foundation/index.js';
import { METRES_PER_INCH } from './length.js';
import { readWithin } from './read-within.js';
import type { UnitFault } from './unit-fault.js';

export interface LengthRange {
  readonly leastM: number;
  readonly mostM: number;
}

/**
 * Plausible scale lengths: from a small ukulele's to a long bass's and somewhat beyond (common practice, no
 * source). In inches they run from 9.8 to 47.2, in millimetres from 250 to 1200, so that a bare number is one or
 * the other and never both.
 */
export const SCALE_LENGTH_RANGE_M: LengthRange = { leastM: 0.25, mostM: 1.2 };

/**
 * A scale length, or another length in `range`, in metres: `25.5"`, `25 1/2 in`, `648 mm`, `64.8cm`, `0.648 m`. A
 * bare number is inches or millimetres, whichever is plausible; one that is neither (`64.8`) is refused with
 * what it may mean.
 */
export const parseLength = (
  text: string,
  range: LengthRange = SCALE_LENGTH_RANGE_M,
): Result<number, UnitFault> =>
  readWithin(
    {
      expected: 'length',
      siUnit: 'm',
      siPerUnit: { in: METRES_PER_INCH, mm: 0.001, cm: 0.01, m: 1 },
      bareUnits: ['in', 'mm'],
      least: range.leastM,
      most: range.mostM,
    },
    text,
  );
