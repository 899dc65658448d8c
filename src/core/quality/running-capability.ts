import { capability, type Ratio } from '../stats/index.js';
import type { RunSeen } from './run-seen.js';

/** How well running strings keep within the tolerance, all runs taken together. */
export interface RunningCapability {
  readonly strings: number;
  readonly runs: number;
  readonly meanOffM: number;
  /** Of single strings about that mean, within runs and between them. */
  readonly sigmaM: number;
  /** Distance to the nearer limit over three sigma, with its 95 % interval and bound. */
  readonly ratio: Ratio;
}

/** Fewer runs bound nothing. Our own choice, no source. */
const LEAST_RUNS = 10;

/**
 * Ppk of the mean diameter of all strings but the first of each run. Strings of a run are alike, so the bounds go by
 * the number of runs, not of strings: careful rather than bold.
 */
export function runningCapability(
  runs: readonly RunSeen[],
  toleranceM: number,
  instrument?: string,
): RunningCapability | undefined {
  const parts = runs.flatMap((run) => {
    const own = run.parts.filter(
      (part) => !part.isFirst && part.strings > 0 && (instrument ?? part.instrument) === part.instrument,
    );
    return own.length === 0 ? [] : [own];
  });
  const all = parts.flat();
  const strings = all.reduce((sum, part) => sum + part.strings, 0);
  if (parts.length < LEAST_RUNS) return undefined;
  const meanOffM = all.reduce((sum, part) => sum + part.strings * part.offM, 0) / strings;
  const squares = all.reduce(
    (sum, part) => sum + part.squaresM2 + part.strings * (part.offM - meanOffM) ** 2,
    0,
  );
  const sigmaM = Math.sqrt(squares / (strings - 1));
  const found = capability({
    specification: { lower: -toleranceM, upper: toleranceM },
    process: { mean: meanOffM, sigma: sigmaM, degrees: parts.length - 1 },
    readings: parts.length,
  });
  return found.ok ? { strings, runs: parts.length, meanOffM, sigmaM, ratio: found.value.centred } : undefined;
}
