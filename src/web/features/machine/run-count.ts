import type { ReadingAnswer } from '../../../contract/index.js';
import { byReason, type Reason, type Tally } from '../../parts/tallies.js';

export type Trial = ReadingAnswer<'trial-strings'>['items'][number];

/** What a run has made so far. */
export interface RunCount {
  /** Counted at the machine. */
  readonly tallied: number;
  /** Trial strings that were judged good: they are good strings of the run. */
  readonly goodTrials: number;
  readonly good: number;
  readonly scrap: readonly Reason[];
  readonly scrapped: number;
}

/** Good strings and scrap by reason: the winder's count, and the trial strings by their verdict. */
export function runCount(
  tallies: readonly Tally[],
  trials: readonly Pick<Trial, 'verdict'>[],
  diallingIn: string,
): RunCount {
  const own = tallies.filter(({ station }) => station === 'winder');
  const tallied = own.reduce((sum, { outcome, count }) => sum + (outcome === 'good' ? count : 0), 0);
  const goodTrials = trials.filter(({ verdict }) => verdict === 'good').length;
  const scrapTrials = trials.filter(({ verdict }) => verdict === 'scrap').length;
  const scrap = byReason([
    ...own.filter(({ outcome }) => outcome === 'scrap'),
    ...(scrapTrials > 0 ? [{ reason: diallingIn, count: scrapTrials }] : []),
  ]);
  const scrapped = scrap.reduce((sum, { count }) => sum + count, 0);
  return { tallied, goodTrials, good: tallied + goodTrials, scrap, scrapped };
}
