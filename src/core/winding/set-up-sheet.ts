import type { Estimate } from '../numeric/index.js';

/** A figure that geometry, strength or the shop's record gives, or that nobody can give yet. */
export type SetPoint =
  | { readonly kind: 'computed'; readonly value: number; readonly why: string }
  | { readonly kind: 'from-record'; readonly value: number; readonly runs: number }
  | { readonly kind: 'no-record'; readonly upper: number; readonly upperWhy: string };

/** All that a winder needs before the first string of a run. SI units. */
export interface SetUpSheet {
  readonly lotId: string;
  readonly machineId: string;
  readonly machineName: string;
  readonly recipeId: string;
  readonly stringKey: string;
  readonly gaugeThou: number;
  readonly positions: 1 | 2;
  readonly quantity: number;
  readonly core: {
    readonly wireId: string;
    readonly shape: 'round' | 'hex';
    readonly sizeM: number;
    readonly cutLengthM: number;
    readonly end: 'ball' | 'loop';
  };
  readonly layers: readonly LayerSetUp[];
  /** Outside diameter to expect: mean over one rotation, and the largest reading. */
  readonly meanDiameterM: Estimate;
  readonly caliperDiameterM: Estimate;
  readonly unitWeightKgPerM: Estimate;
  readonly whirl?: WhirlCheck;
  readonly coreTension: SetPoint;
  readonly cycleSeconds: number;
  readonly setUpMinutes: number;
  readonly expectedScrap: number;
  readonly firstOff: {
    readonly strings: number;
    readonly placesFromEndM: readonly number[];
    readonly rotationsDeg: readonly number[];
    readonly why: string;
  };
  readonly cautions: readonly Caution[];
  /** Set-up of a bench job (plain strings): no layers, cut and end only. */
  readonly kind: 'wind' | 'cut';
}

export interface LayerSetUp {
  readonly wireId: string;
  readonly wireDiameterM: number;
  readonly woundLengthM: number;
  readonly wrapPitchM: number;
  readonly leadAngleRad: number;
  readonly turns: number;
  readonly wirePerStringM: number;
  readonly wirePerStringKg: number;
  readonly spindleRpm: number;
  /** What kept the spindle from turning faster. */
  readonly rpmLimitedBy: 'machine' | 'wire-speed' | 'whirl';
  readonly traverseMPerS: number;
  /** Servo: pitch to type in. Gear: dial to set, with the pitch that it really gives. */
  readonly drive:
    | { readonly kind: 'servo'; readonly pitchM: number }
    | { readonly kind: 'gear'; readonly dial: number; readonly pitchM: number; readonly gap: number };
  readonly wrapTension: SetPoint;
  readonly windSeconds: number;
}

export interface WhirlCheck {
  readonly lowestRpm: number;
  /** Where along the wound length the whirl comes nearest to the spindle, from the start. */
  readonly nearestAtM: number;
  readonly marginShare: number;
}

export type Caution =
  | 'rotating-spindle'
  | 'wire-whip'
  | 'sharp-ends'
  | 'nickel-skin'
  | 'metal-dust'
  | 'lock-out'
  | 'local-rules';
