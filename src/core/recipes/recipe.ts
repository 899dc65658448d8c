import type { Construction } from '../string/index.js';

/** What a player or maker calls the material of a string: the wire one sees and touches. */
export type StringMaterial =
  | 'plain-steel'
  | 'nickel-plated-steel'
  | 'pure-nickel'
  | 'stainless-steel'
  | 'phosphor-bronze'
  | 'bronze-80-20';

/** Gauge is the trade's name for a finished outside diameter in thousandths of an inch; 13.5 is a gauge too. */
export type GaugeThou = number;

export type RecipeState = 'predicted' | 'calibrated';

/** How one finished gauge is made in one material: this core, that wrap, and how it is wound. */
export interface Recipe {
  readonly id: string;
  readonly gaugeThou: GaugeThou;
  readonly material: StringMaterial;
  readonly construction: Construction;
  readonly state: RecipeState;
  readonly version: number;
  /** The shop's wire that the core is cut from, and the wraps from inside outwards. */
  readonly coreWireId: string;
  readonly wrapWireIds: readonly string[];
}
