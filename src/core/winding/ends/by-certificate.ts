import { ALLOYS } from '../../materials/index.js';
import { sectionAreaM2 } from '../../string/index.js';
import type { EndSheet } from './end-sheet.js';
import { PROOF_SHARE, type PullTest } from './pull-test.js';

/**
 * The sheet with the pull that follows from a spool's certificate instead of the standard's least: proof = share x
 * certified strength x area. A certificate speaks for wire too whose standard says nothing.
 */
export function endsByCertificate(ends: EndSheet, strengthPa: number): EndSheet {
  const areaM2 = sectionAreaM2(ends);
  const { youngsModulusPa, densityKgPerM3 } = ALLOYS[ends.alloy];
  const pull: PullTest = {
    proofN: PROOF_SHARE * strengthPa * areaM2,
    share: PROOF_SHARE,
    leastBreakingN: strengthPa * areaM2,
    strengthPa,
    areaM2,
    strengthFrom: 'certificate',
    sources: ['music-wire-notes'],
    whipMPerS: (PROOF_SHARE * strengthPa) / Math.sqrt(youngsModulusPa.value * densityKgPerM3.value),
  };
  return { ...ends, pull };
}
