import { meanRange, rangeSpread } from '../charts/chart-constants.js';
import { meanOf, rangeOf } from '../moments.js';
import type { CrossedStudy } from './crossed-study.js';

/** Standard deviations by the method of averages and ranges, for a study done with pencil and paper. */
export interface AverageRangeStudy {
  readonly meanRanges: readonly number[];
  readonly repeat: number;
  readonly person: number;
  readonly gauge: number;
  readonly part: number;
  readonly total: number;
  readonly kinds: number;
}

/** Ranges of so many groups or more count as if there were no end of them. */
const MANY_GROUPS = 15;

/**
 * EV = mean range/d2, AV^2 = (range of persons' means/d2*)^2 - EV^2/(p r), PV = range of parts' means/d2* (AIAG,
 * Measurement systems analysis, 4th ed. 2010, III B). It cannot see an interaction; `gaugeStudy` can.
 */
export function averageRangeStudy({ parts, persons, trials, cells }: CrossedStudy): AverageRangeStudy {
  const meanRanges = persons.map((_, person) => meanOf(cells.map((row) => rangeOf(row[person]!))));
  const repeat = meanOf(meanRanges) / rangeConstant(trials, parts.length * persons.length);
  const personMeans = persons.map((_, person) => meanOf(cells.flatMap((row) => row[person]!)));
  const partMeans = cells.map((row) => meanOf(row.flat()));
  const between = rangeOf(personMeans) / rangeConstant(persons.length, 1);
  const person = Math.sqrt(Math.max(0, between ** 2 - repeat ** 2 / (parts.length * trials)));
  const part = rangeOf(partMeans) / rangeConstant(parts.length, 1);
  const gauge = Math.hypot(repeat, person);
  const kinds = Math.trunc((1.41 * part) / gauge);
  return { meanRanges, repeat, person, gauge, part, total: Math.hypot(gauge, part), kinds };
}

/** d2* for the mean of so many ranges of n: sqrt(d2^2 + d3^2/groups) (A. Duncan, Quality control and industrial statistics). */
const rangeConstant = (n: number, groups: number): number =>
  groups > MANY_GROUPS ? meanRange(n) : Math.sqrt(meanRange(n) ** 2 + rangeSpread(n) ** 2 / groups);
