import { binomial } from '../distributions/binomial.js';

/**
 * Confidence that the interval from the k-th smallest to the k-th largest of n readings holds the share, whatever their
 * distribution: P(Bin(n, share) <= n - 2k) (S. Wilks, Ann. Math. Statist. 12 (1941) 91); to one side n - k.
 */
export const freeConfidence = (
  readings: number,
  { share, leftOut = 1, sides = 2 }: { share: number; leftOut?: number; sides?: 1 | 2 },
): number => binomial(readings, share).upTo(readings - sides * leftOut);

/** Fewest readings whose least and greatest (or one of them) hold the share with that confidence. */
export function readingsForFree({
  share,
  confidence,
  sides = 2,
}: {
  readonly share: number;
  readonly confidence: number;
  readonly sides?: 1 | 2;
}): number {
  let readings = sides;
  while (freeConfidence(readings, { share, sides }) < confidence) readings += 1;
  return readings;
}
