import { fail, type Result, succeed } from '../foundation/index.js';
import { ALLOYS, type StrengthFault } from '../materials/index.js';
import type { Construction, CoreWire, SeatModel, WrapLayer } from './construction.js';
import { type ConstructionFault, constructionFault } from './construction-fault.js';
import { sectionAreaM2, sectionSecondMomentM4 } from './core-section.js';
import { coreStrength } from './core-strength.js';
import { PRIOR_SEAT, type SeatFigures, seatFigures } from './seat.js';
import { seatFor } from './seat-family.js';
import { layOnSeat, type WoundLayer, type WrapPiece, wrapWidthM } from './wrap.js';

/** What a string is, wherever it may be strung: all that follows from wire, wrap and geometry alone. */
export interface StringBody {
  readonly kind: Construction['kind'];
  readonly linearDensityKgPerM: number;
  readonly coreMassKgPerM: number;
  readonly wrapMassKgPerM: number;
  /** From the core outwards; none on a plain string. */
  readonly layers: readonly WoundLayer[];
  /** Outside diameter averaged over one rotation in the micrometer. */
  readonly meanDiameterM: number;
  /** The micrometer's largest reading. */
  readonly caliperDiameterM: number;
  readonly coreSizeM: number;
  readonly coreAreaM2: number;
  /** Core size over mean outside diameter; 1 on a plain string. */
  readonly coreRatio: number;
  /** EA: pull per unit of strain. */
  readonly axialStiffnessN: number;
  /** EI. */
  readonly bendingStiffnessNM2: number;
  readonly expansionPerK: number;
  /** Least tensile strength of the core wire; undefined where neither certificate nor table gives one. */
  readonly minimumStrengthPa: number | undefined;
  readonly breakingLoadN: number | undefined;
  /** Why there is no minimum strength, where there is none. */
  readonly strengthFault: StrengthFault | undefined;
}

/** A core with its figures looked up. */
export interface CorePiece {
  readonly shape: CoreWire['shape'];
  readonly sizeM: number;
  readonly densityKgPerM3: number;
  readonly youngsModulusPa: number;
  readonly expansionPerK: number;
  readonly minimumStrengthPa: number | undefined;
  readonly strengthFault: StrengthFault | undefined;
}

/**
 * Mass, size, stiffness and strength of a string made so, SI units; best values (see `stringEstimates` for
 * uncertainties). Plain: mu = rho pi d²/4. Wound: mu = rho_c A_c + sum rho_w (pi w²/4) lambda, each layer
 * seated on the one below; EA and EI are the core's plus the seat model's shares of the wrap.
 * Fails where the pieces cannot make a string.
 */
export function stringBody(
  construction: Construction,
  seat: SeatModel = PRIOR_SEAT,
): Result<StringBody, ConstructionFault> {
  const faulty = constructionFault(construction);
  if (faulty) return fail(faulty);
  if (construction.kind === 'plain')
    return succeed(bodyOf(corePiece(construction.wire), [], seatFigures(seat)));
  const wraps = construction.layers.map(wrapPiece);
  const body = bodyOf(corePiece(construction.core), wraps, seatFigures(seatFor(construction, seat)));
  const tooWide = wrapTooWide(wraps, body.layers);
  return tooWide ? fail(tooWide) : succeed(body);
}

/** The core of a construction with density, modulus, expansion and strength looked up. */
export function corePiece(core: CoreWire): CorePiece {
  const alloy = ALLOYS[core.alloy];
  const { minimumStrengthPa, strengthFault } = coreStrength(core);
  return {
    shape: core.shape,
    sizeM: core.sizeM,
    densityKgPerM3: alloy.densityKgPerM3.value,
    youngsModulusPa: alloy.youngsModulusPa.value,
    expansionPerK: alloy.expansionPerK.value,
    minimumStrengthPa,
    strengthFault,
  };
}

/** A layer of a construction with density and modulus looked up. */
export function wrapPiece(layer: WrapLayer): WrapPiece {
  const alloy = ALLOYS[layer.alloy];
  return {
    wireDiameterM: layer.wireDiameterM,
    rolledThicknessM: layer.rolledThicknessM,
    gap: layer.gap,
    densityKgPerM3: alloy.densityKgPerM3.value,
    youngsModulusPa: alloy.youngsModulusPa.value,
  };
}

/** The body from figures alone: plain arithmetic, for pieces already known to be sound. */
export function bodyOf(core: CorePiece, wraps: readonly WrapPiece[], seat: SeatFigures): StringBody {
  const coreAreaM2 = sectionAreaM2(core);
  const coreMassKgPerM = core.densityKgPerM3 * coreAreaM2;
  const isHex = core.shape === 'hex';
  let seatDiameterM = wraps.length > 0 && isHex ? seat.massSeat * core.sizeM : core.sizeM;
  let caliperDiameterM = wraps.length > 0 && isHex ? seat.caliperSeat * core.sizeM : core.sizeM;
  let wrapMassKgPerM = 0;
  let axialStiffnessN = core.youngsModulusPa * coreAreaM2;
  let bendingStiffnessNM2 = core.youngsModulusPa * sectionSecondMomentM4(core);
  const layers: WoundLayer[] = [];
  for (const wrap of wraps) {
    const gap = (1 + wrap.gap) * (1 + seat.extraGap) - 1;
    const layer = layOnSeat({ ...wrap, gap }, seatDiameterM, seat.flattening);
    const outerDiameterM = seatDiameterM + 2 * layer.heightM;
    wrapMassKgPerM += layer.massKgPerM;
    // The metal in a cut square to the string: mass per length over density.
    axialStiffnessN += seat.axialShare * wrap.youngsModulusPa * (layer.massKgPerM / wrap.densityKgPerM3);
    bendingStiffnessNM2 +=
      seat.bendingShare * wrap.youngsModulusPa * ringSecondMomentM4(seatDiameterM, outerDiameterM);
    seatDiameterM = outerDiameterM;
    caliperDiameterM += 2 * layer.heightM;
    layers.push(layer);
  }
  const { minimumStrengthPa } = core;
  return {
    kind: wraps.length > 0 ? 'wound' : 'plain',
    linearDensityKgPerM: coreMassKgPerM + wrapMassKgPerM,
    coreMassKgPerM,
    wrapMassKgPerM,
    layers,
    meanDiameterM: seatDiameterM,
    caliperDiameterM,
    coreSizeM: core.sizeM,
    coreAreaM2,
    coreRatio: core.sizeM / seatDiameterM,
    axialStiffnessN,
    bendingStiffnessNM2,
    expansionPerK: core.expansionPerK,
    minimumStrengthPa,
    breakingLoadN: minimumStrengthPa === undefined ? undefined : minimumStrengthPa * coreAreaM2,
    strengthFault: core.strengthFault,
  };
}

/** Second moment of a solid ring: pi (D⁴ - d⁴) / 64. */
const ringSecondMomentM4 = (innerM: number, outerM: number): number => {
  const inner = innerM * innerM;
  const outer = outerM * outerM;
  return (Math.PI / 64) * (outer * outer - inner * inner);
};

function wrapTooWide(
  wraps: readonly WrapPiece[],
  layers: readonly WoundLayer[],
): ConstructionFault | undefined {
  for (const [index, layer] of layers.entries()) {
    const wrap = wraps[index]!;
    const width = wrapWidthM(wrap.wireDiameterM, wrap.rolledThicknessM);
    const circumferenceM = Math.PI * layer.windingDiameterM;
    if (!(width < circumferenceM)) {
      const piece = index === 0 ? 'wrap-1' : 'wrap-2';
      return { code: 'construction.wrap-too-wide', piece, wrapWidthM: width, circumferenceM };
    }
  }
  return undefined;
}
