import type { Construction } from '../../string/index.js';

/** One string that was wound, and what was measured of it. SI. */
export interface MeasuredString {
  readonly stringId: string;
  readonly runId: string;
  readonly recipeId: string;
  readonly machineId: string;
  /** As it was wound: sizes that spool or certificate tell stand in place of the recipe's. */
  readonly construction: Construction;
  /** Core, then wraps from inside outwards. */
  readonly wires: readonly WireUsed[];
  /**
   * `by-sheet`: wound at the settings that the sheet gives, so that its diameter shows how wrap sits here.
   * `adjusted`: a winder has turned something since, by an amount nobody wrote down; its weight still tells, beside
   * its diameter.
   */
  readonly setting: 'by-sheet' | 'adjusted';
  /** Wrap tension over the sheet's, where it was written down: 1 is the same. Left out: as the sheet says. */
  readonly tensionRatio?: number;
  /** Mean of readings spread over one rotation, and over places. */
  readonly meanDiameterM?: number;
  /** Largest reading found by turning the string in the micrometer, averaged over places. */
  readonly largestDiameterM?: number;
  /** Weight of a cut length over that length. */
  readonly unitWeightKgPerM?: number;
  readonly axialStiffnessN?: number;
}

/** A wire as it lay on the machine. */
export interface WireUsed {
  /** Strings of one lot share its deviation. */
  readonly lot: string;
  /** Standard uncertainty of the size that the construction states, m. */
  readonly sizeUM: number;
}
