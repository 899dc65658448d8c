import { ninetyPercentFactor } from '../recipes/index.js';
import type { NearFigure } from './near-runs.js';

/** A run that a figure leans on. */
export interface LeanedOn {
  readonly name?: string;
  readonly runId?: string;
  readonly date?: string;
  readonly machineId: string;
  /** Of the whole figure, model included: 1 is all. */
  readonly share: number;
}

/** What near runs and a cautious start say together. */
export interface Leaning {
  readonly value: number;
  /** Within these lies what the run is really set to, nine times in ten. */
  readonly low: number;
  readonly high: number;
  /** Runs that are near at all. */
  readonly runs: number;
  /** How many runs of the same kind they are worth together. */
  readonly worthRuns: number;
  readonly startShare: number;
  /** The nearest, at most five, nearest first. */
  readonly leanedOn: readonly LeanedOn[];
}

/** The cautious start is some 40 % off, one standard deviation: nobody has published any. No source. */
const START_LOG_SPREAD = 0.35;
/** Runs of one kind are set some 10 % apart, worth four runs until the shop's own tell. No source. */
const RUN_LOG_SPREAD = 0.1;
const RUN_SPREAD_WORTH = 4;
const NAMED = 5;
/** A run that has less of the figure is counted, not named. */
const LEAST_NAMED = 0.005;

/**
 * Normal model of the logarithm of a setting: the start m0 with variance s0^2 as prior, each near run an observation with
 * variance s^2 / weight. Posterior precision P = 1/s0^2 + sum w / s^2, mean (m0/s0^2 + sum w x / s^2) / P; so the start
 * is left behind as near runs come in. Interval: Student's t with variance s^2 + 1/P. Undefined where nothing is known.
 * A. Gelman et al., Bayesian Data Analysis, 3rd ed. 2013, 2.5.
 */
export function leanOnRuns(near: readonly NearFigure[], start: number | undefined): Leaning | undefined {
  if (near.length === 0 && start === undefined) return undefined;
  const worthRuns = near.reduce((sum, { weight }) => sum + weight, 0);
  const variance = runVariance(near, worthRuns);
  const startPrecision = start === undefined ? 0 : 1 / START_LOG_SPREAD ** 2;
  const precision = startPrecision + worthRuns / variance;
  const mean =
    ((start === undefined ? 0 : startPrecision * Math.log(start)) +
      near.reduce((sum, { weight, value }) => sum + (weight / variance) * Math.log(value), 0)) /
    precision;
  const half = ninetyPercentFactor(RUN_SPREAD_WORTH + worthRuns) * Math.sqrt(variance + 1 / precision);
  return {
    value: Math.exp(mean),
    low: Math.exp(mean - half),
    high: Math.exp(mean + half),
    runs: near.length,
    worthRuns,
    startShare: startPrecision / precision,
    leanedOn: near
      .toSorted((one, other) => other.weight - one.weight)
      .filter(({ weight }) => weight / variance / precision >= LEAST_NAMED)
      .slice(0, NAMED)
      .map(({ run: { name, runId, date, machineId }, weight }) => ({
        ...(name === undefined ? {} : { name }),
        ...(runId === undefined ? {} : { runId }),
        ...(date === undefined ? {} : { date }),
        machineId,
        share: weight / variance / precision,
      })),
  };
}

/** Weighted variance of the logarithms about their mean, drawn to the usual one. */
function runVariance(near: readonly NearFigure[], worthRuns: number): number {
  const usual = RUN_SPREAD_WORTH * RUN_LOG_SPREAD ** 2;
  if (near.length < 2) return usual / RUN_SPREAD_WORTH;
  const mean = near.reduce((sum, { weight, value }) => sum + weight * Math.log(value), 0) / worthRuns;
  const squares = near.reduce((sum, { weight, value }) => sum + weight * (Math.log(value) - mean) ** 2, 0);
  return (usual + squares) / (RUN_SPREAD_WORTH + Math.max(0, worthRuns - 1));
}
