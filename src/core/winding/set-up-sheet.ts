import type { Estimate } from '../numeric/index.js';
import type { Caution } from './cautions.js';
import type { DriveSetting } from './drive-for-pitch.js';
import type { EndSheet } from './ends/end-sheet.js';
import type { FirstOff } from './first-off.js';
import type { SetPoint } from './set-point.js';
import type { SpindleLimit } from './spindle-speed.js';
import type { WhirlCheck } from './whirl-check.js';

/** All that a winder needs before the first string of a run. SI units. */
export interface SetUpSheet {
  /** Set-up of a bench job (plain strings): no layers, cut and end only. */
  readonly kind: 'wind' | 'cut';
  readonly lotId: string;
  readonly machineId: string;
  readonly machineName: string;
  readonly recipeId: string;
  readonly stringKey: string;
  readonly gaugeThou: number;
  readonly positions: 1 | 2;
  readonly quantity: number;
  /** Of a plain string, the string itself. */
  readonly core: {
    readonly wireId: string;
    readonly shape: 'round' | 'hex';
    readonly sizeM: number;
    readonly cutLengthM: number;
    readonly end: 'ball' | 'loop';
  };
  /** How the wire is cut and its end made: at the bench, of a core before it is wound. */
  readonly ends?: EndSheet;
  readonly layers: readonly LayerSetUp[];
  /** Outside diameter to expect: mean over one rotation, and the largest reading. */
  readonly meanDiameterM: Estimate;
  readonly caliperDiameterM: Estimate;
  readonly unitWeightKgPerM: Estimate;
  /** Of the layer that comes nearest to whirling; left out where nothing turns. */
  readonly whirl?: WhirlCheck;
  /** Left out on the bench. */
  readonly coreTension?: SetPoint;
  readonly cycleSeconds: number;
  /** Running time of the whole quantity, set-up and scrap left out. */
  readonly runMinutes: number;
  readonly setUpMinutes: number;
  readonly expectedScrap: number;
  readonly firstOff: FirstOff;
  readonly cautions: readonly Caution[];
  /** How fast the end of a loose tail would fly, to be said beside the cautions; left out where nothing turns. */
  readonly looseTail?: { readonly tailM: number; readonly speedMPerS: number };
}

export interface LayerSetUp {
  readonly wireId: string;
  readonly wireDiameterM: number;
  readonly woundLengthM: number;
  /** The pitch that the machine really gives, and the angle, turns and wire that follow from it. */
  readonly wrapPitchM: number;
  readonly leadAngleRad: number;
  readonly turns: number;
  /** Tails included. */
  readonly wirePerStringM: number;
  readonly wirePerStringKg: number;
  readonly spindleRpm: number;
  /** What kept the spindle from turning faster. */
  readonly rpmLimitedBy: SpindleLimit;
  readonly traverseMPerS: number;
  /** Servo: pitch to type in. Gear: dial to set, with the pitch that it really gives. */
  readonly drive: DriveSetting;
  readonly wrapTension: SetPoint;
  /** Stretch of the wrap wire at its tension, or at the bound where there is no record; a share of its length. */
  readonly wrapStrain?: number;
  readonly windSeconds: number;
}
