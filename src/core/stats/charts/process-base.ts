import { fail, type Result, succeed } from '../../foundation/index.js';
import { meanOf, rangeOf, spreadOf, squaresAboutMean } from '../moments.js';
import { type StatsFault, tooFew } from '../stats-fault.js';
import { meanRange, meanSpread } from './chart-constants.js';

/** What a steady stretch (phase I) tells of a process; limits for later readings (phase II) follow from it. */
export interface ProcessBase {
  /** In the unit of the readings, as is sigma. */
  readonly mean: number;
  /** Standard deviation of single readings, from the spread within groups. */
  readonly sigma: number;
  /** Degrees of freedom that sigma is worth. */
  readonly degrees: number;
}

type Groups = readonly (readonly number[])[];
type Based = Result<ProcessBase, StatsFault>;

/** A range is worth nine tenths of the degrees of a standard deviation; a rule of thumb for groups of up to ten. */
const WORTH_OF_RANGE = 0.9;

/** Of single readings in order: sigma = mean moving range / d2(2) (NIST/SEMATECH e-Handbook 6.3.2.2). */
export function baseOfSingles(values: readonly number[]): Based {
  if (values.length < 2) return fail(tooFew(values.length, 2));
  const sigma = meanOf(movingRanges(values)) / meanRange(2);
  return based({ mean: meanOf(values), sigma, degrees: WORTH_OF_MOVING_RANGE * (values.length - 1) });
}

/** Neighbouring ranges share a reading, so their mean tells less (J. Cryer & T. Ryan, J. Quality Technology 22 (1990) 187). */
const WORTH_OF_MOVING_RANGE = 0.605;

export const movingRanges = (values: readonly number[]): readonly number[] =>
  values.slice(1).map((value, index) => Math.abs(value - values[index]!));

/** Of groups of one size: sigma = mean range / d2 (NIST/SEMATECH e-Handbook 6.3.2.1). */
export function baseByRange(groups: Groups): Based {
  const n = groups[0]?.length ?? 0;
  if (n < 2) return fail(tooFew(n, 2));
  if (groups.some((group) => group.length !== n)) return fail({ code: 'stats.unequal-groups' });
  const sigma = meanOf(groups.map(rangeOf)) / meanRange(n);
  return based({
    mean: meanOf(groups.flat()),
    sigma,
    degrees: WORTH_OF_RANGE * groups.length * (n - 1),
  });
}

/** Of groups of one size: sigma = mean standard deviation / c4 (NIST/SEMATECH e-Handbook 6.3.2.1). */
export function baseBySpread(groups: Groups): Based {
  const n = groups[0]?.length ?? 0;
  if (n < 2) return fail(tooFew(n, 2));
  if (groups.some((group) => group.length !== n)) return fail({ code: 'stats.unequal-groups' });
  return based({
    mean: meanOf(groups.flat()),
    sigma: meanOf(groups.map(spreadOf)) / meanSpread(n),
    degrees: groups.length * (n - 1),
  });
}

/** Of groups of any sizes: sigma^2 = sum of squares within groups / (n - groups). */
export function baseByPooledSpread(groups: Groups): Based {
  const degrees = groups.reduce((sum, group) => sum + Math.max(0, group.length - 1), 0);
  if (degrees < 1) return fail(tooFew(degrees, 1));
  const squares = groups.reduce((sum, group) => sum + squaresAboutMean(group), 0);
  return based({ mean: meanOf(groups.flat()), sigma: Math.sqrt(squares / degrees), degrees });
}

const based = (base: ProcessBase): Based =>
  base.sigma > 0 ? succeed(base) : fail({ code: 'stats.no-spread' });
