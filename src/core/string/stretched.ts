import { invariant } from '../foundation/index.js';
import type { StringBody } from './body.js';
import { bendingParameter, inharmonicityOf } from './stiffness.js';

/** Where and at which pitch a string sounds. */
export interface Sounding {
  /** Nut (or fret) to saddle. */
  readonly speakingLengthM: number;
  readonly frequencyHz: number;
  /** Wire that stretches along: post to anchor where the string slides at nut and saddle, else nut to saddle. */
  readonly stretchingLengthM?: number;
}

/** A string under pull. */
export interface StretchedString {
  readonly body: StringBody;
  readonly speakingLengthM: number;
  readonly stretchingLengthM: number;
  readonly frequencyHz: number;
  readonly tensionN: number;
  /** Stress in the core, which carries the pull. */
  readonly stressPa: number;
  /** Stress over the core's minimum strength; undefined where that is not known. */
  readonly stressShare: number | undefined;
  /** EA / T: how many times its own strain the pull would need to double. */
  readonly kappa: number;
  /** b = sqrt(EI/T) / L. */
  readonly bendingParameter: number;
  /** B = pi² EI / (T L²) = pi² b². */
  readonly inharmonicityB: number;
}

/** Wire between post and nut plus saddle and anchor on a common guitar, where nobody measured it. */
const BEYOND_NUT_AND_SADDLE_M = 0.2;

/** Pull that sounds a string at `frequencyHz`, N: T = mu (2 L f)² (Mersenne; Beausoleil 2024 eq. 1). */
export const tensionN = (linearDensityKgPerM: number, speakingLengthM: number, frequencyHz: number): number =>
  linearDensityKgPerM * (2 * speakingLengthM * frequencyHz) ** 2;

/** Pitch of a flexible string under a pull, Hz: f = sqrt(T/mu) / (2 L). */
export const pulledFrequencyHz = (pulled: {
  readonly tensionN: number;
  readonly linearDensityKgPerM: number;
  readonly speakingLengthM: number;
}): number => Math.sqrt(pulled.tensionN / pulled.linearDensityKgPerM) / (2 * pulled.speakingLengthM);

/**
 * The string tuned: pull, stress, stretch and stiffness. The pitch is taken for that of a flexible string,
 * as everywhere in the trade: held ends sharpen a real string by the share b, 2 cents on a plain top string
 * and 7 on a thick wound one, so that it pulls 0.2 to 0.8 % less than reckoned.
 */
export function stretch(body: StringBody, sounding: Sounding): StretchedString {
  const { speakingLengthM, frequencyHz } = sounding;
  const stretchingLengthM = sounding.stretchingLengthM ?? speakingLengthM + BEYOND_NUT_AND_SADDLE_M;
  invariant(speakingLengthM > 0 && frequencyHz > 0, 'a string sounds at a positive length and frequency');
  invariant(stretchingLengthM >= speakingLengthM, 'the wire that stretches spans the sounding length');
  const pullN = tensionN(body.linearDensityKgPerM, speakingLengthM, frequencyHz);
  const stressPa = pullN / body.coreAreaM2;
  const stiff = {
    bendingStiffnessNM2: body.bendingStiffnessNM2,
    tensionN: pullN,
    speakingLengthM,
  };
  return {
    body,
    speakingLengthM,
    stretchingLengthM,
    frequencyHz,
    tensionN: pullN,
    stressPa,
    stressShare: body.minimumStrengthPa === undefined ? undefined : stressPa / body.minimumStrengthPa,
    kappa: body.axialStiffnessN / pullN,
    bendingParameter: bendingParameter(stiff),
    inharmonicityB: inharmonicityOf(stiff),
  };
}
