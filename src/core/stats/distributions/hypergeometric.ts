import { binomialTerm } from '../special/beta-tails.js';
import { type Counted, countOfShare } from './counted.js';

export interface Draw {
  /** Strings in the lot, bad ones among them, and how many are drawn without putting any back. */
  readonly lot: number;
  readonly bad: number;
  readonly drawn: number;
}

/**
 * How many bad strings a sample holds that is drawn from a finite lot: C(bad, k) C(lot-bad, drawn-k) / C(lot, drawn),
 * each term by three binomial ones (Loader 2000, section 5), summed from the smaller side.
 */
export function hypergeometric({ lot, bad, drawn }: Draw): Counted {
  const least = Math.max(0, drawn - (lot - bad));
  const most = Math.min(drawn, bad);
  const share = { x: drawn / lot, rest: (lot - drawn) / lot };
  const whole = binomialTerm(drawn, lot, share);
  const at = (k: number): number =>
    k < least || k > most || !Number.isInteger(k)
      ? 0
      : (binomialTerm(k, bad, share) * binomialTerm(drawn - k, lot - bad, share)) / whole;
  const sum = (from: number, to: number): number => {
    let total = 0;
    for (let k = Math.max(from, least); k <= Math.min(to, most); k++) total += at(k);
    return Math.min(1, total);
  };
  const middle = (drawn * bad) / lot;
  const upTo = (k: number): number =>
    k <= middle ? sum(least, Math.floor(k)) : 1 - sum(Math.floor(k) + 1, most);
  const from = (k: number): number =>
    k > middle ? sum(Math.ceil(k), most) : 1 - sum(least, Math.ceil(k) - 1);
  return { at, upTo, from, quantile: (asked) => countOfShare(asked, upTo, middle) };
}
