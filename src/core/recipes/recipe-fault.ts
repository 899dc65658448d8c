import type { GaugeThou, StringMaterial } from './recipe.js';

/** A way that comes nearest to a gauge that cannot be had. */
export interface NearestBuild {
  /** The gauge it would have, not rounded. */
  readonly gaugeThou: GaugeThou;
  readonly meanDiameterM: number;
  readonly offGaugeM: number;
  readonly coreWireId: string;
  readonly wrapWireIds: readonly string[];
}

/** A wrap wire to buy: over this core it would land on the gauge. */
export interface WrapNeeded {
  readonly coreWireId: string;
  readonly coreSizeM: number;
  readonly wireDiameterM: number;
  readonly coreRatio: number;
}

/** Why a gauge cannot be made, with the nearest thing that could. */
export type RecipeFault =
  | { readonly code: 'recipe.no-core'; readonly gaugeThou: GaugeThou; readonly material: StringMaterial }
  | {
      readonly code: 'recipe.no-wrap-of-material';
      readonly gaugeThou: GaugeThou;
      readonly material: StringMaterial;
    }
  | {
      readonly code: 'recipe.none-within-tolerance';
      readonly gaugeThou: GaugeThou;
      readonly material: StringMaterial;
      readonly toleranceM: number;
      /** Of what the wires at hand can make; left out where not even one sane build exists. */
      readonly nearest?: NearestBuild;
      /** Wraps that would do, for the cores whose ratio lies nearest to the one aimed at. */
      readonly wrapsNeeded: readonly WrapNeeded[];
    }
  | {
      readonly code: 'recipe.no-plain-wire';
      readonly gaugeThou: GaugeThou;
      readonly toleranceM: number;
      /** Round core wires next below and next above. */
      readonly nearest: readonly NearestBuild[];
    };
