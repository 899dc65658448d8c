import type { Estimate } from '../../numeric/index.js';
import { meanOf } from './pooled-spread.js';
import { meanReadingVariance, placeVariance, type StringNoise } from './string-noise.js';

/** Why a string's readings are not believed at once. */
export type Doubt =
  /** The whole string is further off than a string of this process should ever be. */
  | { readonly kind: 'far-off'; readonly errorM: number; readonly expected: Estimate }
  /** One place is unlike the others of the string. */
  | { readonly kind: 'odd-place'; readonly place: number; readonly errorM: number; readonly othersM: number };

/** Further out than this many standard deviations a reading is more likely a slip of the hand. Our own choice. */
const FAR_OFF = 4;
const ODD = 5;

/** What is odd about a string's readings, given the error that the process was expected to have there. */
export function doubtOf(
  errorsM: readonly number[],
  expected: Estimate,
  noise: StringNoise,
): Doubt | undefined {
  const place = oddPlace(errorsM, Math.sqrt(placeVariance(noise)));
  if (place) return place;
  const errorM = meanOf(errorsM);
  const spreadM = Math.hypot(expected.u, Math.sqrt(meanReadingVariance(noise, errorsM.length)));
  return Math.abs(errorM - expected.value) > FAR_OFF * spreadM
    ? { kind: 'far-off', errorM, expected }
    : undefined;
}

/** What to take from a string that was measured twice: both where they agree, else the second. */
export function settled(
  firstM: readonly number[],
  againM: readonly number[],
  noise: StringNoise,
): readonly number[] {
  const spreadM = Math.sqrt(placeVariance(noise) * (1 / firstM.length + 1 / againM.length));
  const agree = Math.abs(meanOf(firstM) - meanOf(againM)) <= FAR_OFF * spreadM;
  const firstIsEven = !oddPlace(firstM, Math.sqrt(placeVariance(noise)));
  return agree && firstIsEven ? [...firstM, ...againM] : againM;
}

/** A place that is far from the middle one of the string's readings; three are needed to tell. */
function oddPlace(errorsM: readonly number[], spreadM: number): Doubt | undefined {
  if (errorsM.length < 3) return undefined;
  const inOrder = [...errorsM].sort((one, other) => one - other);
  const othersM = inOrder[Math.floor(inOrder.length / 2)]!;
  const away = errorsM.map((errorM) => Math.abs(errorM - othersM));
  const place = away.indexOf(Math.max(...away));
  return away[place]! > ODD * spreadM
    ? { kind: 'odd-place', place, errorM: errorsM[place]!, othersM }
    : undefined;
}
