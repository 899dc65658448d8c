import { ALLOYS, type SourceKey, STRENGTH_TABLES, type StrengthTableId } from '../../materials/index.js';
import type { CoreWire, StringBody } from '../../string/index.js';
import { CORE_ELASTIC_SHARE, coreBound } from '../strength-bound.js';

/** How an end is pulled, and against what it is judged. */
export interface PullTest {
  /** Hold this, and the end is good: share x strength x area. */
  readonly proofN: number;
  readonly share: number;
  /** The least at which the wire itself would break. */
  readonly leastBreakingN: number;
  readonly strengthPa: number;
  readonly areaM2: number;
  readonly strengthFrom: 'certificate' | 'standard';
  /** Where the standard says it. */
  readonly table?: StrengthTableId;
  readonly sources: readonly SourceKey[];
  /** As fast as the loose end could fly if the wire broke at the proof force: stress / sqrt(E rho). */
  readonly whipMPerS: number;
}

/** Share of the wire's least strength that an end has to hold: where the elastic limit begins. */
export const PROOF_SHARE = CORE_ELASTIC_SHARE;

/**
 * The pull that an end has to hold: where the wire's elastic limit begins, 65 % of its least strength. Higher
 * than a string is tuned to by rule, and yet no wire is drawn by it, so that what held may still be used.
 * Strength by the wire's certificate, else by its standard. Undefined where no strength is known.
 */
export function pullTest(wire: CoreWire, body: StringBody): PullTest | undefined {
  const bound = coreBound(body);
  if (!bound) return undefined;
  const { upperN, share, strengthPa, areaM2 } = bound;
  const isCertified = wire.certifiedStrengthPa !== undefined;
  const { youngsModulusPa, densityKgPerM3 } = ALLOYS[wire.alloy];
  return {
    proofN: upperN,
    share,
    leastBreakingN: strengthPa * areaM2,
    strengthPa,
    areaM2,
    strengthFrom: isCertified ? 'certificate' : 'standard',
    ...(isCertified ? {} : { table: wire.strengthTable }),
    sources: [...bound.sources, ...(isCertified ? [] : STRENGTH_TABLES[wire.strengthTable].sources)],
    whipMPerS: (share * strengthPa) / Math.sqrt(youngsModulusPa.value * densityKgPerM3.value),
  };
}
