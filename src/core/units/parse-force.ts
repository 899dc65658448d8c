import type { Result } from '../foundation/index.js';
import { NEWTONS_PER_KILOGRAM_FORCE, NEWTONS_PER_POUND_FORCE } from './force.js';
import { readWithin } from './read-within.js';
import type { UnitFault } from './unit-fault.js';

/** Plausible pulls of one string, N: guitar strings lie around 50 to 130, basses up to about 300. */
export const STRING_PULL_RANGE_N = { leastN: 2, mostN: 500 } as const;

/**
 * The pull of a string in newtons: `72 N`, `16.2 lbf`, `16.2 lb`, `7.3 kgf`, `7.3 kg` (pounds and kilograms of
 * pull are the trade's words for the forces). A bare number is refused: all three units are in use, and their
 * ranges overlap.
 */
export const parseForce = (text: string): Result<number, UnitFault> =>
  readWithin(
    {
      expected: 'force',
      siUnit: 'N',
      siPerUnit: { N: 1, lbf: NEWTONS_PER_POUND_FORCE, kgf: NEWTONS_PER_KILOGRAM_FORCE },
      bareUnits: [],
      least: STRING_PULL_RANGE_N.leastN,
      most: STRING_PULL_RANGE_N.mostN,
    },
    text,
  );
