/**
 * When figures count as calibrated rather than predicted. Our own rule, no source:
 * - enough strings, from more than one set-up, so that one good morning proves nothing;
 * - the 90 % interval of the mean diameter reaches no further to either side than a third of the tolerance: beside
 *   the tolerance itself it then adds a tenth (as squares add);
 * - its strings do not contradict the model: their mean lies within 1 in 100 of what is expected of it.
 */
export const CALIBRATED_RULE = {
  strings: 5,
  runs: 2,
  familyStrings: 12,
  familyRuns: 4,
  shareOfTolerance: 1 / 3,
  agreesWithin: 2.576,
} as const;

/** Half a thousandth of an inch to either side: the band that a gauge named in whole thousandths has. A workshop value, no source. */
export const USUAL_TOLERANCE_M = 12.7e-6;
