import type { SeatModel } from '../string/index.js';
import type { OfferedCore, OfferedWrap } from './offered-wire.js';
import type { GaugeThou, StringMaterial } from './recipe.js';
import type { ReferenceSounding } from './recipe-figures.js';

/** A gauge to be made, and what there is to make it from. */
export interface RecipeSearch {
  readonly gaugeThou: GaugeThou;
  /** Finished gauge, plain or wound: plain steel is made of round core wire alone. */
  readonly material: StringMaterial;
  /** How far the rotation-mean diameter may stand off the gauge, either way. m. */
  readonly toleranceM: number;
  readonly cores: readonly OfferedCore[];
  readonly wraps: readonly OfferedWrap[];
  /** 2 tries two layers of wrap, 1 never does. Left out: two from a gauge of 60 on. */
  readonly maxLayers?: 1 | 2;
  /** Gap between turns, as `WrapLayer` means it; 0 where left out. */
  readonly gap?: number;
  readonly seat?: SeatModel;
  readonly sounding?: ReferenceSounding;
  /** Core size over diameter to aim at; `usualCoreRatio` where left out. */
  readonly targetCoreRatio?: number;
}
