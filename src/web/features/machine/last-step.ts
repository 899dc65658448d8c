import type { Trial } from './run-count.js';
import type { RunReading } from './use-run-book.js';

/** The last thing that was done about the first strings: a reading, a string, or the word on one. */
export type LastStep =
  | { readonly kind: 'verdict'; readonly trial: Trial }
  | { readonly kind: 'reading'; readonly reading: RunReading }
  | { readonly kind: 'string'; readonly trial: Trial };

/** In the order of entry; the word on a string counts as later than all that was measured of it. Undefined where nothing is left. */
export function lastStep(
  trials: readonly (Trial & { readonly rank: string })[],
  readings: readonly RunReading[],
): LastStep | undefined {
  const byRank = (one: { readonly rank: string }, other: { readonly rank: string }) =>
    one.rank < other.rank ? -1 : 1;
  const reading = readings.toSorted(byRank).at(-1);
  const newest = trials.toSorted(byRank).at(-1);
  const isReading = reading !== undefined && (newest === undefined || reading.rank > newest.rank);
  const trial = isReading ? trials.find(({ id }) => id === reading.trialStringId) : newest;
  if (trial && trial.verdict !== 'open') return { kind: 'verdict', trial };
  if (isReading) return { kind: 'reading', reading };
  return trial && { kind: 'string', trial };
}
