import { type StrengthFault, tensileStrength } from '../materials/index.js';
import type { CoreWire } from './construction.js';

/** The strength a core can be trusted with, or why none is known. */
export interface CoreStrength {
  readonly minimumStrengthPa: number | undefined;
  readonly strengthFault: StrengthFault | undefined;
}

/**
 * Least tensile strength of a core, Pa: the spool's certificate where there is one, else the standard's
 * table at the wire's size (across flats of a hexagon), read the cautious way between rows.
 */
export function coreStrength(core: CoreWire): CoreStrength {
  if (core.certifiedStrengthPa !== undefined) {
    return { minimumStrengthPa: core.certifiedStrengthPa, strengthFault: undefined };
  }
  const found = tensileStrength({
    table: core.strengthTable,
    diameterM: core.sizeM,
    reading: 'conservative',
  });
  return found.ok
    ? { minimumStrengthPa: found.value.minimumPa, strengthFault: undefined }
    : { minimumStrengthPa: undefined, strengthFault: found.fault };
}
