import { invariant } from '../foundation/index.js';
import { findRoot } from '../numeric/index.js';
import { centsBetween } from '../units/index.js';
import { CENTS_PER_NEPER } from './cents-per-neper.js';
import { pushAside } from './side-push.js';
import type { StretchedString } from './stretched.js';

/** A note bent sharp by pushing the string across the fret. */
export interface Bend {
  /** How far the finger pushes the string aside. */
  readonly travelM: number;
  readonly forceN: number;
  /** Pull while bent. */
  readonly tensionN: number;
  /** Stress over the core's minimum strength while bent; undefined where that is not known. */
  readonly stressShare: number | undefined;
  /** Cents per millimetre of travel where the bend arrives: how finely the hand must aim. */
  readonly centsPerMm: number;
}

/** No hand pushes a string aside further than this share of its length. */
const FARTHEST_PUSH_SHARE = 0.25;
const TRAVEL_TOLERANCE_M = 1e-9;

/**
 * Pitch ratio of a string whose whole length grows by the share `strain`, mass kept:
 * f/f0 = sqrt((1 + kappa e) / (1 + e)) (Grimes 2014, eq. 6).
 */
export const bentRatio = (kappa: number, strain: number): number =>
  Math.sqrt((1 + kappa * strain) / (1 + strain));

/**
 * Pull to add so that such a string sounds `ratio` times higher, N: dT = T0 (r² - 1) / (1 - r² T0/EA) (the
 * inverse of Grimes 2014, eq. 6). No finite pull does it where r² >= kappa.
 */
export const bendPullN = (tensionN: number, kappa: number, ratio: number): number =>
  (tensionN * (ratio * ratio - 1)) / (1 - (ratio * ratio) / kappa);

/**
 * Force and travel that bend the note of `fret` up by `cents`. The finger stands at the fret and pushes the
 * string into a triangle with nut and saddle; the part from finger to saddle sounds, wire slides at nut and
 * saddle: f/f0 = (l0/l) sqrt((1 + kappa e)(1 + e)). At the 12th fret of a string clamped at nut and saddle
 * this IS Grimes' equation with the finger in mid-string. No friction at fret or nut. Undefined where the
 * note cannot be reached by pushing a quarter of the open length aside.
 */
export function bend(
  string: Omit<StretchedString, 'body' | 'stressPa' | 'bendingParameter' | 'inharmonicityB'>,
  { fret, cents }: { readonly fret: number; readonly cents: number },
): Bend | undefined {
  invariant(fret > 0 && cents > 0, 'a bend goes up from a fret');
  const distanceToSaddleM = string.speakingLengthM * 2 ** (-fret / 12);
  const distanceToNutM = string.speakingLengthM - distanceToSaddleM;
  const pushed = (pushM: number) => pushAside(string, { distanceToNutM, distanceToSaddleM, pushM });
  const missingCents = (pushM: number): number => {
    const { strain, saddleSideM } = pushed(pushM);
    const ratio = (distanceToSaddleM / saddleSideM) * Math.sqrt((1 + string.kappa * strain) * (1 + strain));
    return centsBetween(1, ratio) - cents;
  };
  const high = FARTHEST_PUSH_SHARE * string.speakingLengthM;
  const travelM = findRoot({ f: missingCents, low: 0, high, tolerance: TRAVEL_TOLERANCE_M });
  if (travelM === undefined) return undefined;
  const { forceN, tensionN, strain, saddleSideM } = pushed(travelM);
  // d ln(ratio)/dy, of which forceN/tensionN is dl/dy.
  const strainPerM = forceN / tensionN / string.stretchingLengthM;
  const stretchedPerM = (strainPerM / 2) * (string.kappa / (1 + string.kappa * strain) + 1 / (1 + strain));
  return {
    travelM,
    forceN,
    tensionN,
    stressShare:
      string.stressShare === undefined ? undefined : (string.stressShare * tensionN) / string.tensionN,
    centsPerMm: (CENTS_PER_NEPER * (stretchedPerM - travelM / saddleSideM ** 2)) / 1000,
  };
}
