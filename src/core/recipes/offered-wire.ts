import type { AlloyId } from '../materials/index.js';
import type { CoreWire } from '../string/index.js';

/** Core wire that the shop offers for a recipe. */
export interface OfferedCore extends CoreWire {
  readonly wireId: string;
  /** Price in minor units of money per kilogram, where cost is to count. */
  readonly priceMinorPerKg?: number;
}

/** Round wrap wire that the shop offers for a recipe. */
export interface OfferedWrap {
  readonly wireId: string;
  readonly wireDiameterM: number;
  readonly alloy: AlloyId;
  readonly priceMinorPerKg?: number;
}

/** Wires that make one string: a core, and wraps from inside outwards (none for a plain string). */
export interface Build {
  readonly core: OfferedCore;
  readonly wraps: readonly OfferedWrap[];
}

/** The core as a construction knows it, without what only the shop knows about it. */
export const coreWireOf = (offered: OfferedCore): CoreWire => ({
  shape: offered.shape,
  sizeM: offered.sizeM,
  alloy: offered.alloy,
  strengthTable: offered.strengthTable,
  ...(offered.certifiedStrengthPa === undefined ? {} : { certifiedStrengthPa: offered.certifiedStrengthPa }),
});
