import { type MonotoneCurve, monotoneInterpolation } from '../numeric/index.js';
import { bend } from '../string/index.js';

/** Where a string is bent, as far as the force depends on it. */
export interface BentAt {
  readonly speakingLengthM: number;
  readonly stretchingLengthM: number;
}

/** A whole tone at the 12th fret: the bend that sets are compared by. */
const COMPARED_BEND = { fret: 12, cents: 200 } as const;

/**
 * Force, N, that bends a string a whole tone at its 12th fret, from its pull and EA (see `bend` of the string
 * room); undefined where no hand reaches that far.
 */
export function bendForceN(
  string: { readonly tensionN: number; readonly axialStiffnessN: number },
  at: BentAt,
): number | undefined {
  const share = forceShare(string.axialStiffnessN / string.tensionN, at);
  return share === undefined ? undefined : share * string.tensionN;
}

/** As `bendForceN`, for many strings at one place. */
export type BendForce = (tensionN: number, axialStiffnessN: number) => number | undefined;

/**
 * Bending force at one place, read off a curve worked out once. On one geometry the force over the pull
 * depends on kappa = EA/T alone, and smoothly: a cubic through eight rows an octave keeps within 0.01 %,
 * hundreds of times faster than solving each bend.
 */
export function bendForceAt(at: BentAt): BendForce {
  const rows = KAPPAS.flatMap((kappa) => {
    const share = forceShare(kappa, at);
    return share === undefined ? [] : [{ lnKappa: Math.log(kappa), lnShare: Math.log(share) }];
  });
  if (rows.length < 2) return (tensionN, axialStiffnessN) => bendForceN({ tensionN, axialStiffnessN }, at);
  const curve = monotoneInterpolation(
    rows.map((row) => row.lnKappa),
    rows.map((row) => row.lnShare),
  );
  return (tensionN, axialStiffnessN) => {
    const lnKappa = Math.log(axialStiffnessN / tensionN);
    if (!spans(curve, lnKappa)) return bendForceN({ tensionN, axialStiffnessN }, at);
    return tensionN * Math.exp(curve(lnKappa));
  };
}

/** 16 to 4,096, eight an octave: from nylon under high pull to a slack bass string of steel. */
const KAPPAS = Array.from({ length: 65 }, (_, index) => 2 ** (4 + index / 8));

const spans = (curve: MonotoneCurve, lnKappa: number): boolean =>
  lnKappa >= curve.leastX && lnKappa <= curve.mostX;

/** Force of the bend over the open string's pull. */
function forceShare(kappa: number, { speakingLengthM, stretchingLengthM }: BentAt): number | undefined {
  const ofUnitPull = {
    speakingLengthM,
    stretchingLengthM,
    // Force goes with pull at a given kappa; pitch and strength do not enter.
    tensionN: 1,
    frequencyHz: 1,
    stressShare: undefined,
    kappa,
  };
  return bend(ofUnitPull, COMPARED_BEND)?.forceN;
}
