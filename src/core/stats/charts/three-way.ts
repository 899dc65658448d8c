import { type Result, succeed } from '../../foundation/index.js';
import { meanOf } from '../moments.js';
import type { StatsFault } from '../stats-fault.js';
import { baseByRange, baseOfSingles, type ProcessBase } from './process-base.js';

/** A string measured at places along it, the bridge end first. */
export interface ThreeWay {
  /** String to string: of single values, the means of strings. */
  readonly strings: ProcessBase;
  /** Along a string: for the ranges within strings. */
  readonly within: ProcessBase;
  /** Last place less first: what runs from end to end. */
  readonly taper: ProcessBase;
}

/**
 * What strings measured at several places are charted by. Places on one string are no sample of the process: limits of
 * means from the spread within strings would call good strings bad most of the time (with a spread of 3 between and 1
 * within, 57 in 100). So the means are charted as single values, beside them the ranges and the taper (D. Wheeler,
 * Advanced topics in statistical process control, 1995: three-way charts).
 */
export function threeWay(strings: readonly (readonly number[])[]): Result<ThreeWay, StatsFault> {
  const means = baseOfSingles(strings.map(meanOf));
  if (!means.ok) return means;
  const within = baseByRange(strings);
  if (!within.ok) return within;
  const taper = baseOfSingles(strings.map((places) => places.at(-1)! - places[0]!));
  if (!taper.ok) return taper;
  return succeed({ strings: means.value, within: within.value, taper: taper.value });
}
