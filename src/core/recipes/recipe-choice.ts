import type { Construction } from '../string/index.js';
import type { GaugeThou, Recipe, StringMaterial } from './recipe.js';

/** What a recipe is best at among those worth choosing from. */
export type Merit =
  | 'nearest-gauge'
  | 'most-flexible'
  | 'strongest'
  | 'least-inharmonic'
  | 'nearest-core-ratio'
  | 'cheapest';

/** Figures that recipes for one gauge are compared by. All strings sound at the same length; see `ReferenceSounding`. */
export interface RecipeFigures {
  readonly linearDensityKgPerM: number;
  /** EI. */
  readonly bendingStiffnessNM2: number;
  /** EA. */
  readonly axialStiffnessN: number;
  readonly tensionN: number;
  readonly stressPa: number;
  /** Of the core's minimum strength; undefined where no table or certificate gives one, and then ranked last. */
  readonly stressShare: number | undefined;
  readonly inharmonicityB: number;
  /** Core size over rotation-mean diameter. */
  readonly coreRatio: number;
  /** How far the core ratio stands off the one aimed at, without sign. */
  readonly coreRatioDeviation: number;
  /** Wire in one metre of wound string, minor units; undefined where a price is not known. */
  readonly wireCostMinorPerM: number | undefined;
}

/** One way to make the gauge. */
export interface RecipeChoice {
  readonly gaugeThou: GaugeThou;
  readonly material: StringMaterial;
  readonly construction: Construction;
  readonly coreWireId: string;
  /** From inside outwards; empty on a plain string. */
  readonly wrapWireIds: readonly string[];
  /** What a micrometer reads averaged over one rotation, and at most. */
  readonly meanDiameterM: number;
  readonly caliperDiameterM: number;
  /** Mean diameter less the gauge; negative where it comes out thin. */
  readonly offGaugeM: number;
  readonly figures: RecipeFigures;
  /** What it is best at, ties included; empty where it is only a sound compromise. */
  readonly bestAt: readonly Merit[];
}

/** A choice settled as a recipe of the shop's, first version. */
export const settledRecipe = (
  choice: RecipeChoice,
  settled: { readonly id: string; readonly state: Recipe['state'] },
): Recipe => ({
  id: settled.id,
  gaugeThou: choice.gaugeThou,
  material: choice.material,
  construction: choice.construction,
  state: settled.state,
  version: 1,
  coreWireId: choice.coreWireId,
  wrapWireIds: choice.wrapWireIds,
});
