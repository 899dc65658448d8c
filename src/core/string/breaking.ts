import type { StringBody } from './body.js';

/**
 * Pitch at which the core reaches its least strength, Hz: f_b = sqrt(F_b/mu) / (2 L); undefined where that
 * strength is not known. On a plain string it is sqrt(sigma_b/rho) / (2 L), whatever the gauge.
 */
export const breakingFrequencyHz = (
  body: Pick<StringBody, 'breakingLoadN' | 'linearDensityKgPerM'>,
  speakingLengthM: number,
): number | undefined =>
  body.breakingLoadN === undefined
    ? undefined
    : Math.sqrt(body.breakingLoadN / body.linearDensityKgPerM) / (2 * speakingLengthM);

/** Semitones a string may still be tuned up until its stress share is 1: stress doubles in 6 semitones. */
export const semitonesToBreaking = (stressShare: number): number => -6 * Math.log2(stressShare);
