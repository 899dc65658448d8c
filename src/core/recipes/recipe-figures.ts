import { ALLOYS } from '../materials/index.js';
import { type StringBody, stretch } from '../string/index.js';
import type { Build } from './offered-wire.js';
import type { RecipeFigures } from './recipe-choice.js';

/**
 * Where the strings of a comparison sound: at a pitch, or at one pull for all, which is right where the gauge
 * has no pitch yet.
 */
export type ReferenceSounding =
  | { readonly speakingLengthM: number; readonly frequencyHz: number }
  | { readonly speakingLengthM: number; readonly tensionN: number };

/** A middling pull at a common scale length, for comparing recipes only. Our own choice, no source. */
export const USUAL_SOUNDING: ReferenceSounding = { speakingLengthM: 0.648, tensionN: 75 };

/** The figures of one build from its finished body. */
export function recipeFigures(weighed: {
  readonly build: Build;
  readonly body: StringBody;
  readonly sounding: ReferenceSounding;
  readonly targetCoreRatio: number;
}): RecipeFigures {
  const { build, body, sounding, targetCoreRatio } = weighed;
  const { speakingLengthM } = sounding;
  const frequencyHz =
    'frequencyHz' in sounding
      ? sounding.frequencyHz
      : Math.sqrt(sounding.tensionN / body.linearDensityKgPerM) / (2 * speakingLengthM);
  const stretched = stretch(body, { speakingLengthM, frequencyHz });
  return {
    linearDensityKgPerM: body.linearDensityKgPerM,
    bendingStiffnessNM2: body.bendingStiffnessNM2,
    axialStiffnessN: body.axialStiffnessN,
    tensionN: stretched.tensionN,
    stressPa: stretched.stressPa,
    stressShare: stretched.stressShare,
    inharmonicityB: stretched.inharmonicityB,
    coreRatio: body.coreRatio,
    coreRatioDeviation: body.kind === 'plain' ? 0 : Math.abs(body.coreRatio - targetCoreRatio),
    wireCostMinorPerM: wireCostMinorPerM(build, body),
  };
}

/** Wire mass per metre of string times its price, core and each layer; undefined where one price is missing. */
function wireCostMinorPerM({ core, wraps }: Build, body: StringBody): number | undefined {
  if (core.priceMinorPerKg === undefined) return undefined;
  let cost = body.coreMassKgPerM * core.priceMinorPerKg;
  for (const [index, wrap] of wraps.entries()) {
    if (wrap.priceMinorPerKg === undefined) return undefined;
    const wireAreaM2 = (Math.PI / 4) * wrap.wireDiameterM ** 2;
    const lambda = body.layers[index]!.wireLengthPerLength;
    cost += ALLOYS[wrap.alloy].densityKgPerM3.value * wireAreaM2 * lambda * wrap.priceMinorPerKg;
  }
  return cost;
}
