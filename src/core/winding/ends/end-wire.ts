import type { StringEnd } from '../../sets/index.js';
import { type EndPractice, STARTING_END_PRACTICE } from './end-practice.js';

interface TwistedEnd {
  readonly sizeM: number;
  readonly end: StringEnd;
  readonly twists: number;
}

/**
 * Wire in the end itself, beyond the string's length over all: once round the ball or the eye, then a helix of
 * touching turns about the standing wire, then the tail. pi (D + d) + n sqrt((2 pi d)^2 + d^2) + tail; the helix
 * runs at one diameter from the other wire's middle. Geometry.
 */
export function endWireM(
  { sizeM, end, twists }: TwistedEnd,
  practice: EndPractice = STARTING_END_PRACTICE,
): number {
  const roundM = Math.PI * (practice.eyeM[end] + sizeM);
  const turnM = Math.hypot(2 * Math.PI * sizeM, sizeM);
  return roundM + twists * turnM + practice.tailM;
}
