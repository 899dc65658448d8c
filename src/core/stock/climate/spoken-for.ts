import { invariant } from '../../foundation/index.js';

/** What an instrument showed of a room's air at a moment. */
export interface ClimateReading {
  /** Milliseconds since 1970, UTC. */
  readonly atMs: number;
  readonly temperatureC: number;
  /** Share of saturation, 0 to 1. */
  readonly relativeHumidity: number;
}

/** A stretch of time that one reading speaks for. */
export interface Stretch extends ClimateReading {
  readonly fromMs: number;
  readonly toMs: number;
}

/** From one moment to another. */
export interface Span {
  readonly fromMs: number;
  readonly toMs: number;
}

/** The air of a room over a time, as far as it was read. */
export interface SpokenFor {
  /** In the order of time, none over another. */
  readonly stretches: readonly Stretch[];
  /** Of which nobody knows anything. */
  readonly gaps: readonly Span[];
  /** Between two readings, as it usually was; 0 where there are fewer than two. */
  readonly usualStepMs: number;
  /** A silence longer than this is a gap. */
  readonly longestSilenceMs: number;
}

const HOUR_MS = 3_600_000;
/** A silence of so many usual steps is one too many; but no more than a day, and a lost reading of a fast logger is none. */
const STEPS_OF_SILENCE = 4;
const LEAST_SILENCE_MS = HOUR_MS;
const MOST_SILENCE_MS = 24 * HOUR_MS;

/**
 * Shares out a time among the readings of one room: each speaks for the time half-way to its neighbours. Where they stand
 * further apart than the longest silence, each speaks for half a usual step only, and what is left between is a gap: air
 * that nobody read is neither good nor bad. Readings in the order of time; `span` is the time asked about.
 */
export function spokenFor(readings: readonly ClimateReading[], { fromMs, toMs }: Span): SpokenFor {
  invariant(
    readings.every(({ atMs }, at) => at === 0 || atMs >= readings[at - 1]!.atMs),
    'readings stand in the order of time',
  );
  const usualStepMs = usualStep(readings);
  const longestSilenceMs = Math.min(
    MOST_SILENCE_MS,
    Math.max(LEAST_SILENCE_MS, STEPS_OF_SILENCE * usualStepMs),
  );
  const alone = Math.min(usualStepMs, longestSilenceMs) / 2;
  const reach = (one: ClimateReading | undefined, other: ClimateReading | undefined): number => {
    if (!one || !other) return alone;
    const apart = other.atMs - one.atMs;
    return apart > longestSilenceMs ? alone : apart / 2;
  };
  const stretches = readings
    .map((reading, at) => ({
      ...reading,
      fromMs: Math.max(fromMs, reading.atMs - reach(readings[at - 1], reading)),
      toMs: Math.min(toMs, reading.atMs + reach(reading, readings[at + 1])),
    }))
    .filter((stretch) => stretch.toMs > stretch.fromMs);
  return { stretches, gaps: gapsBetween(stretches, { fromMs, toMs }), usualStepMs, longestSilenceMs };
}

function usualStep(readings: readonly ClimateReading[]): number {
  const steps = readings
    .slice(1)
    .map(({ atMs }, at) => atMs - readings[at]!.atMs)
    .sort((a, b) => a - b);
  return steps[Math.floor((steps.length - 1) / 2)] ?? 0;
}

function gapsBetween(stretches: readonly Stretch[], { fromMs, toMs }: Span): readonly Span[] {
  const gaps: Span[] = [];
  let knownToMs = fromMs;
  for (const stretch of [...stretches, { fromMs: toMs, toMs }]) {
    if (stretch.fromMs > knownToMs) gaps.push({ fromMs: knownToMs, toMs: stretch.fromMs });
    knownToMs = Math.max(knownToMs, stretch.toMs);
  }
  return gaps;
}
