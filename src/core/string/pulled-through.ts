import { centsBetween } from '../units/index.js';
import { CENTS_PER_NEPER } from './cents-per-neper.js';
import type { StretchedString } from './stretched.js';

type Pullable = Pick<StretchedString, 'kappa' | 'stretchingLengthM'>;

/**
 * Cents that the pitch rises when `pulledM` of wire is drawn out past a fixed sounding length, by tuner or
 * vibrato arm (negative: let in): f/f0 = sqrt((1 + kappa e)(1 + e)), e = pulled / stretching length.
 * The string keeps its length but loses mass. Undefined where it hangs slack.
 */
export function pullCents({ kappa, stretchingLengthM }: Pullable, pulledM: number): number | undefined {
  const strain = pulledM / stretchingLengthM;
  const pull = 1 + kappa * strain;
  return pull > 0 ? centsBetween(1, Math.sqrt(pull * (1 + strain))) : undefined;
}

/** The same for the first small pull, in cents per millimetre: 865.6 (kappa + 1) / stretching length in mm. */
export const centsPerMmPulled = ({ kappa, stretchingLengthM }: Pullable): number =>
  ((CENTS_PER_NEPER / 2) * (kappa + 1)) / (stretchingLengthM * 1000);

/** Wire that must be drawn out for the pitch to rise by `cents` (fall where negative), m: `pullCents` solved. */
export function pullForCentsM({ kappa, stretchingLengthM }: Pullable, cents: number): number {
  const ratioSquared = 2 ** (cents / 600);
  // kappa e² + (kappa + 1) e + (1 - r²) = 0, in the form that loses no digits where e is small.
  const half = kappa + 1;
  const root = Math.sqrt(half * half - 4 * kappa * (1 - ratioSquared));
  return (stretchingLengthM * 2 * (ratioSquared - 1)) / (half + root);
}

/**
 * Cents that a string falls when a vibrato arm lets in the wire that makes `reference` fall by
 * `referenceFallCents` (100: a semitone); positive when it falls. The arm moves all anchors alike. Undefined
 * where the string goes slack.
 */
export function vibratoArmFallCents(
  string: Pullable,
  reference: Pullable,
  referenceFallCents = 100,
): number | undefined {
  const cents = pullCents(string, pullForCentsM(reference, -referenceFallCents));
  return cents === undefined ? undefined : -cents;
}
