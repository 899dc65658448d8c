/** A distribution on the whole numbers from 0. */
export interface Counted {
  /** Chance of exactly k. */
  at(k: number): number;
  /** Chance of k or fewer. */
  upTo(k: number): number;
  /** Chance of k or more: small ones keep their digits, as 1 - upTo(k - 1) would not. */
  from(k: number): number;
  /** The smallest k for which upTo(k) reaches the share. */
  quantile(share: number): number;
}

/** Shares that differ by less than this share of themselves are the same: rounding, not chance, decides there. */
const ROUNDING = 1e-13;

/** Smallest k with upTo(k) >= share, sought from a first guess outward and then by halving. */
export function countOfShare(share: number, upTo: (k: number) => number, guess: number): number {
  const wanted = share * (1 - ROUNDING);
  const reaches = (k: number): boolean => upTo(k) >= wanted;
  let high = Math.max(0, Math.round(guess));
  for (let step = 1; !reaches(high); step *= 2) high += step;
  let low = -1;
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (reaches(middle)) high = middle;
    else low = middle;
  }
  return high;
}
