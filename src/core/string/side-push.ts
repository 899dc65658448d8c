import type { StretchedString } from './stretched.js';

/** A string pushed sideways at one place. */
export interface SidePush {
  readonly distanceToNutM: number;
  readonly distanceToSaddleM: number;
  readonly pushM: number;
}

/** What the push does. */
export interface PushedString {
  /** Force of the finger. */
  readonly forceN: number;
  readonly tensionN: number;
  /** Extra strain of the wire that stretches. */
  readonly strain: number;
  /** Length of the string from finger to saddle. */
  readonly saddleSideM: number;
}

/**
 * The string pushed aside by a finger, its ends fixed: exact triangle, T' = T (1 + kappa e),
 * F = T' (y/l1 + y/l2). For a small push that is T y (1/a + 1/b); at mid-string 4 T y / L + 8 EA y³ / (L² L_s).
 */
export function pushAside(
  string: Pick<StretchedString, 'tensionN' | 'kappa' | 'stretchingLengthM'>,
  { distanceToNutM, distanceToSaddleM, pushM }: SidePush,
): PushedString {
  const nutSideM = Math.hypot(distanceToNutM, pushM);
  const saddleSideM = Math.hypot(distanceToSaddleM, pushM);
  // y² / (l + a) is l - a without the loss of digits.
  const lengthenedM =
    (pushM * pushM) / (nutSideM + distanceToNutM) + (pushM * pushM) / (saddleSideM + distanceToSaddleM);
  const strain = lengthenedM / string.stretchingLengthM;
  const tensionN = string.tensionN * (1 + string.kappa * strain);
  return {
    forceN: tensionN * (pushM / nutSideM + pushM / saddleSideM),
    tensionN,
    strain,
    saddleSideM,
  };
}
