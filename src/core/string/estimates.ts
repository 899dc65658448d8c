import { type Result, succeed } from '../foundation/index.js';
import { type Estimate, estimate, propagate } from '../numeric/index.js';
import { bodyOf, stringBody } from './body.js';
import type { Construction, SeatModel } from './construction.js';
import type { ConstructionFault } from './construction-fault.js';
import { type Feel, feel } from './feel.js';
import { PRIOR_SEAT } from './seat.js';
import { type Sounding, type StretchedString, stretch } from './stretched.js';
import { type UncertainPieces, uncertainPieces } from './uncertain-pieces.js';

/** A string's figures with their standard uncertainties. Pitch and lengths are taken as exact. */
export interface StringEstimates {
  readonly linearDensityKgPerM: Estimate;
  readonly meanDiameterM: Estimate;
  readonly caliperDiameterM: Estimate;
  readonly axialStiffnessN: Estimate;
  readonly bendingStiffnessNM2: Estimate;
  readonly tensionN: Estimate;
  readonly stressPa: Estimate;
  /** Against the table's or certificate's minimum, itself exact by definition; undefined where there is none. */
  readonly stressShare: Estimate | undefined;
  readonly kappa: Estimate;
  readonly inharmonicityB: Estimate;
  readonly sideForceN: Estimate;
  readonly centsPerMmPulled: Estimate;
  readonly centsPerK: Estimate;
  /** A whole tone up at the 12th fret; undefined where it is out of reach. */
  readonly bend: { readonly travelM: Estimate; readonly forceN: Estimate } | undefined;
}

/**
 * Figures of a tuned string with uncertainties, to first order from wire sizes, densities, moduli and the
 * seat model; one wire used twice errs once, and all figures come from the same inputs. Fails like `stringBody`.
 */
export function stringEstimates(
  construction: Construction,
  sounding: Sounding,
  seat: SeatModel = PRIOR_SEAT,
): Result<StringEstimates, ConstructionFault> {
  const best = stringBody(construction, seat);
  if (!best.ok) return best;
  const { minimumStrengthPa } = best.value;
  const { bendTravelM, bendForceN, ...figures } = figuresWithDoubt(
    uncertainPieces(construction, seat),
    sounding,
  );
  return succeed({
    ...figures,
    stressShare: minimumStrengthPa === undefined ? undefined : shareOf(figures.stressPa, minimumStrengthPa),
    bend: Number.isNaN(bendTravelM.u) ? undefined : { travelM: bendTravelM, forceN: bendForceN },
  });
}

type Figure = (string: StretchedString, felt: Feel) => number;

const FIGURES = {
  linearDensityKgPerM: ({ body }) => body.linearDensityKgPerM,
  meanDiameterM: ({ body }) => body.meanDiameterM,
  caliperDiameterM: ({ body }) => body.caliperDiameterM,
  axialStiffnessN: ({ body }) => body.axialStiffnessN,
  bendingStiffnessNM2: ({ body }) => body.bendingStiffnessNM2,
  tensionN: (string) => string.tensionN,
  stressPa: (string) => string.stressPa,
  kappa: (string) => string.kappa,
  inharmonicityB: (string) => string.inharmonicityB,
  sideForceN: (_string, felt) => felt.sideForceN,
  centsPerMmPulled: (_string, felt) => felt.centsPerMmPulled,
  centsPerK: (_string, felt) => felt.centsPerK,
  bendTravelM: (_string, felt) => felt.bend?.travelM ?? Number.NaN,
  bendForceN: (_string, felt) => felt.bend?.forceN ?? Number.NaN,
} satisfies Record<string, Figure>;

type FigureName = keyof typeof FIGURES;
const FIGURE_NAMES = Object.keys(FIGURES) as readonly FigureName[];

function figuresWithDoubt(pieces: UncertainPieces, sounding: Sounding): Record<FigureName, Estimate> {
  const estimates = propagate((numbers) => {
    const { core, wraps, seat } = pieces.build(numbers);
    const string = stretch(bodyOf(core, wraps, seat), sounding);
    const felt = feel(string);
    return FIGURE_NAMES.map((name) => FIGURES[name](string, felt));
  }, pieces.inputs);
  const named = FIGURE_NAMES.map((name, index) => [name, estimates[index]!] as const);
  return Object.fromEntries(named) as Record<FigureName, Estimate>;
}

const shareOf = (part: Estimate, whole: number): Estimate => estimate(part.value / whole, part.u / whole);
