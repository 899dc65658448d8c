import { invariant } from '../foundation/index.js';
import { MINUS } from './decimal.js';

/** Whole minor units nearest to `minor`; a half goes to the even side, so that many roundings do not drift. */
export function roundHalfEvenMinor(minor: number): number {
  invariant(Number.isFinite(minor), `an amount of money is ${minor}`);
  const below = Math.floor(minor);
  const over = minor - below;
  const rounded = over > 0.5 || (over === 0.5 && below % 2 !== 0) ? below + 1 : below;
  return rounded === 0 ? 0 : rounded;
}

/** Far beyond any shop's money, and small enough for quotas in doubles to keep their whole part right. */
const LARGEST_TO_SHARE_MINOR = 1e12;

/**
 * Shares a whole amount out by weights >= 0 in whole minor units that sum to it exactly: each gets its quota
 * rounded down, then the units left over go to the largest remainders (Hamilton's method), the first of equals.
 * Weights that are all zero share equally; a negative total is shared like its opposite.
 */
export function shareMinor(totalMinor: number, weights: readonly number[]): number[] {
  invariant(
    Number.isInteger(totalMinor) && Math.abs(totalMinor) <= LARGEST_TO_SHARE_MINOR,
    `an amount to share is ${totalMinor}`,
  );
  invariant(weights.length > 0, 'an amount was to be shared among nobody');
  invariant(
    weights.every((weight) => Number.isFinite(weight) && weight >= 0),
    'a weight to share by is below zero or no number',
  );
  if (totalMinor < 0) return shareMinor(-totalMinor, weights).map((share) => (share === 0 ? 0 : -share));
  const quotas = quotasOf(totalMinor, weights);
  const shares = quotas.map(Math.floor);
  const leftOver = totalMinor - shares.reduce((sum, share) => sum + share, 0);
  for (const index of largestRemainders(quotas).slice(0, leftOver)) shares[index] = shares[index]! + 1;
  return shares;
}

/** An amount in minor units with its currency: 123456 in EUR with two digits is 'EUR 1234.56'. */
export function formatMoney(
  minor: number,
  { currency, minorDigits }: { readonly currency: string; readonly minorDigits: number },
): string {
  invariant(Number.isSafeInteger(minor), `an amount of money to be shown is ${minor}`);
  const figures = String(Math.abs(minor)).padStart(minorDigits + 1, '0');
  const point = figures.length - minorDigits;
  const amount = minorDigits === 0 ? figures : `${figures.slice(0, point)}.${figures.slice(point)}`;
  return `${currency} ${minor < 0 ? MINUS : ''}${amount}`;
}

function quotasOf(totalMinor: number, weights: readonly number[]): number[] {
  const largest = Math.max(...weights);
  // Divided by the largest first, so that no sum of weights overflows.
  const even = largest === 0 ? weights.map(() => 1) : weights.map((weight) => weight / largest);
  const sum = even.reduce((total, weight) => total + weight, 0);
  return even.map((weight) => (totalMinor * weight) / sum);
}

const largestRemainders = (quotas: readonly number[]): number[] =>
  quotas
    .map((quota, index) => ({ index, remainder: quota - Math.floor(quota) }))
    .sort((one, other) => other.remainder - one.remainder || one.index - other.index)
    .map(({ index }) => index);
