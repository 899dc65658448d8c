import { fail, type Result, succeed } from '../../foundation/index.js';
import type { Interval } from '../intervals/interval.js';
import type { StatsFault } from '../stats-fault.js';
import { type CrossedAnova, crossedAnova, type Squares, squares } from './crossed-anova.js';
import type { CrossedStudy } from './crossed-study.js';
import { differenceInterval, sumInterval } from './variance-intervals.js';

/** Standard deviations, in the unit of the readings. */
export interface GaugeParts {
  /** The same person, the same part, again. */
  readonly repeat: number;
  /** From person to person; the interaction is in it where it was kept. */
  readonly person: number;
  readonly interaction: number;
  /** All three: what the gauge and those who use it add. */
  readonly gauge: number;
  readonly part: number;
  readonly total: number;
}

/** Whether the gauge can tell: by its share, under 10 % good, up to 30 % only for want of a better, above bad. */
export type GaugeVerdict = 'tells' | 'tells-roughly' | 'cannot-tell';

export interface GaugeStudy {
  readonly anova: CrossedAnova;
  /** The interaction was taken into the repeats, as it was no more than chance. */
  readonly isPooled: boolean;
  readonly sd: GaugeParts;
  /** Of the gauge's standard deviation, and of the parts'. */
  readonly gaugeInterval: Interval;
  readonly partInterval: Interval;
  /** The gauge over the spread of the study, 0 to 1. */
  readonly shareOfStudy: number;
  /** Six gauge deviations over the width of the tolerance; only where one was given. */
  readonly shareOfTolerance?: number;
  /** How many kinds of parts it can tell apart: 1.41 part/gauge, cut to a whole number. */
  readonly kinds: number;
  readonly verdict: GaugeVerdict;
  /** The interval of the gauge lies within the verdict as a whole. */
  readonly isSure: boolean;
}

export interface GaugeAsked {
  /** Width of the tolerance, in the unit of the readings. */
  readonly tolerance?: number;
  /** The interaction is kept where its p is below this: 0.05 unless told; 0.25 is in use too. */
  readonly keepBelow?: number;
  readonly confidence?: number;
}

/**
 * What the gauge, the persons and the parts each add to the readings: repeat = MSe, interaction = (MSi - MSe)/r, person
 * = (MSo - MSi)/(p r), part = (MSp - MSi)/(o r), none below nought (AIAG, Measurement systems analysis, 4th ed. 2010, III
 * B). Intervals: F. Graybill & C. Wang 1980 and N. Ting et al. 1990, as in R. Burdick, C. Borror & D. Montgomery, J.
 * Quality Technology 35 (2003) 342.
 */
export function gaugeStudy(study: CrossedStudy, asked: GaugeAsked = {}): Result<GaugeStudy, StatsFault> {
  const { tolerance, keepBelow = 0.05, confidence = 0.95 } = asked;
  if (tolerance !== undefined && !(tolerance > 0)) return fail({ code: 'stats.limits-unusable' });
  const anova = crossedAnova(study);
  const isPooled = !(anova.interactionP < keepBelow);
  const sd = partsOf(study, anova, isPooled);
  if (!(sd.total > 0)) return fail({ code: 'stats.no-spread' });
  const gaugeInterval = gaugeIntervalOf(study, anova, { isPooled, confidence });
  const shareOfStudy = sd.gauge / sd.total;
  const shareOfTolerance = tolerance === undefined ? undefined : (6 * sd.gauge) / tolerance;
  const verdict = verdictOf(shareOfTolerance ?? shareOfStudy);
  const reach = (gauge: number): number =>
    tolerance === undefined ? gauge / Math.hypot(gauge, sd.part) : (6 * gauge) / tolerance;
  return succeed({
    anova,
    isPooled,
    sd,
    gaugeInterval,
    partInterval: partIntervalOf(study, anova, { isPooled, confidence }),
    shareOfStudy,
    ...(shareOfTolerance === undefined ? {} : { shareOfTolerance }),
    kinds: Math.trunc((1.41 * sd.part) / sd.gauge),
    verdict,
    isSure: [gaugeInterval.from, gaugeInterval.to].every((end) => verdictOf(reach(end)) === verdict),
  });
}

export function verdictOf(share: number): GaugeVerdict {
  if (share < 0.1) return 'tells';
  return share <= 0.3 ? 'tells-roughly' : 'cannot-tell';
}

/** Interaction and repeats, or both in one where the interaction is no more than chance. */
function beneath(
  { interaction, repeat }: CrossedAnova,
  isPooled: boolean,
): { inner: Squares; under: Squares } {
  if (!isPooled) return { inner: repeat, under: interaction };
  const pooled = squares(interaction.sum + repeat.sum, interaction.degrees + repeat.degrees);
  return { inner: pooled, under: pooled };
}

function partsOf(study: CrossedStudy, anova: CrossedAnova, isPooled: boolean): GaugeParts {
  const [p, o, r] = [study.parts.length, study.persons.length, study.trials];
  const { inner, under } = beneath(anova, isPooled);
  const interaction = Math.max(0, (under.mean - inner.mean) / r);
  const person = Math.max(0, (anova.person.mean - under.mean) / (p * r));
  const part = Math.max(0, (anova.part.mean - under.mean) / (o * r));
  const gauge = inner.mean + interaction + person;
  return {
    repeat: Math.sqrt(inner.mean),
    person: Math.sqrt(person),
    interaction: Math.sqrt(interaction),
    gauge: Math.sqrt(gauge),
    part: Math.sqrt(part),
    total: Math.sqrt(gauge + part),
  };
}

interface How {
  readonly isPooled: boolean;
  readonly confidence: number;
}

/** Gauge variance = MSo/pr + (p-1) MSi/pr + (r-1) MSe/r: no mean square counts against it. */
function gaugeIntervalOf(study: CrossedStudy, anova: CrossedAnova, { isPooled, confidence }: How): Interval {
  const [p, r] = [study.parts.length, study.trials];
  const { inner, under } = beneath(anova, isPooled);
  const person = { times: 1 / (p * r), squares: anova.person };
  const terms = isPooled
    ? [person, { times: 1 - 1 / (p * r), squares: inner }]
    : [person, { times: (p - 1) / (p * r), squares: under }, { times: 1 - 1 / r, squares: inner }];
  return rooted(sumInterval(terms, confidence));
}

function partIntervalOf(study: CrossedStudy, anova: CrossedAnova, { isPooled, confidence }: How): Interval {
  const { under } = beneath(anova, isPooled);
  const times = 1 / (study.persons.length * study.trials);
  return rooted(differenceInterval({ times, squares: anova.part }, { times, squares: under }, confidence));
}

const rooted = ({ from, to }: Interval): Interval => ({
  from: Math.sqrt(Math.max(0, from)),
  to: Math.sqrt(Math.max(0, to)),
});
