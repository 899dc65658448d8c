import type { StiffString } from './stiffness.js';

/** Loss factors of a string (Woodhouse 2004, Table I). */
export interface StringLosses {
  /** eta_F: loss that goes with the pull; on a wound string rubbing between turns. */
  readonly pullLoss: number;
  /** eta_A, 1/s: air. */
  readonly airLossPerS: number;
  /** eta_B: loss that goes with bending. */
  readonly bendingLoss: number;
}

const DECIBELS_PER_NEPER = 20 / Math.LN10;

/**
 * How fast the amplitude of partial `n` at `frequencyHz` dies away, 1/s: omega eta_n / 2, with
 * eta_n = [T (eta_F + eta_A/omega) + EI eta_B (n pi/L)²] / [T + EI (n pi/L)²] (Woodhouse 2004, eq. 8).
 */
export function decayPerS(
  string: StiffString & { readonly losses: StringLosses },
  partial: { readonly n: number; readonly frequencyHz: number },
): number {
  const { tensionN, losses } = string;
  const omega = 2 * Math.PI * partial.frequencyHz;
  const bending = string.bendingStiffnessNM2 * ((partial.n * Math.PI) / string.speakingLengthM) ** 2;
  const lost = tensionN * (losses.pullLoss + losses.airLossPerS / omega) + bending * losses.bendingLoss;
  return (omega / 2) * (lost / (tensionN + bending));
}

/** The same in decibels a second. */
export const decayDecibelsPerS = (...question: Parameters<typeof decayPerS>): number =>
  DECIBELS_PER_NEPER * decayPerS(...question);
