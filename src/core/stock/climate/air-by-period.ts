import { type DryRoomLimits, isDryEnough } from '../dry-room.js';
import { CRITICAL_HUMIDITY, isWet } from './corrosion-risk.js';
import type { Span, SpokenFor, Stretch } from './spoken-for.js';

/** The air of a room over a day or a week. */
export interface PeriodAir extends Span {
  readonly readings: number;
  readonly knownHours: number;
  readonly unknownHours: number;
  readonly outsideHours: number;
  readonly criticalHours: number;
  readonly wetHours: number;
  /** Of what is known, each reading weighed by the time that it speaks for; undefined where nothing is known. */
  readonly air:
    | {
        readonly meanC: number;
        readonly leastC: number;
        readonly mostC: number;
        readonly meanHumidity: number;
        readonly leastHumidity: number;
        readonly mostHumidity: number;
      }
    | undefined;
}

const HOUR_MS = 3_600_000;

/** Sums up the air of each period; a stretch that runs over an end is shared out. */
export function airByPeriod(
  { stretches }: SpokenFor,
  periods: readonly Span[],
  limits: DryRoomLimits,
): readonly PeriodAir[] {
  let first = 0;
  return periods.map((period) => {
    while (first < stretches.length && stretches[first]!.toMs <= period.fromMs) first += 1;
    const own: Stretch[] = [];
    for (let at = first; at < stretches.length && stretches[at]!.fromMs < period.toMs; at++)
      own.push(within(stretches[at]!, period));
    return airOf(own, period, limits);
  });
}

const within = (stretch: Stretch, { fromMs, toMs }: Span): Stretch => ({
  ...stretch,
  fromMs: Math.max(stretch.fromMs, fromMs),
  toMs: Math.min(stretch.toMs, toMs),
});

function airOf(own: readonly Stretch[], { fromMs, toMs }: Span, limits: DryRoomLimits): PeriodAir {
  const hours = ({ fromMs: from, toMs: to }: Span) => (to - from) / HOUR_MS;
  const hoursOf = (counts: (stretch: Stretch) => boolean): number =>
    own.reduce((sum, each) => sum + (counts(each) ? hours(each) : 0), 0);
  const knownHours = hoursOf(() => true);
  const meanOf = (figureOf: (stretch: Stretch) => number): number =>
    own.reduce((sum, each) => sum + figureOf(each) * hours(each), 0) / knownHours;
  const warmths = own.map(({ temperatureC }) => temperatureC);
  const damps = own.map(({ relativeHumidity }) => relativeHumidity);
  return {
    fromMs,
    toMs,
    readings: own.filter(({ atMs }) => atMs >= fromMs && atMs < toMs).length,
    knownHours,
    unknownHours: Math.max(0, hours({ fromMs, toMs }) - knownHours),
    outsideHours: hoursOf((each) => !isDryEnough(each, limits)),
    criticalHours: hoursOf(({ relativeHumidity }) => relativeHumidity >= CRITICAL_HUMIDITY),
    wetHours: hoursOf(isWet),
    air:
      knownHours === 0
        ? undefined
        : {
            meanC: meanOf(({ temperatureC }) => temperatureC),
            leastC: Math.min(...warmths),
            mostC: Math.max(...warmths),
            meanHumidity: meanOf(({ relativeHumidity }) => relativeHumidity),
            leastHumidity: Math.min(...damps),
            mostHumidity: Math.max(...damps),
          },
  };
}
