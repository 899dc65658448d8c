import type { Knob } from './dial-in/knob.js';
import type { EndMaking } from './ends/end-making.js';
import type { LearnedChanges } from './learn-changes/learned-change.js';
import type { PullRow } from './measure-dial/dial-for-pull.js';

/** What every place that makes strings has in common. */
interface Station {
  readonly id: string;
  readonly name: string;
  /** Strings made side by side in one cycle. */
  readonly positions: 1 | 2;
  /** Longest string that fits, end to end. */
  readonly longestStringM: number;
  readonly gaugesThou: { readonly least: number; readonly most: number };
  /** Hand time per cycle. */
  readonly loadSeconds: number;
  readonly unloadSeconds: number;
  /** Minutes on duty in a day. */
  readonly minutesPerDay: number;
  readonly changeMinutes: ChangeMinutes;
  /** Strings expected to be scrapped while dialling in, by the kind of change. */
  readonly changeScrap: ChangeScrap;
  /** What the shop's own set-ups make of these figures, by kind of change; left out before there are enough of any. */
  readonly changeLearned?: LearnedChanges;
}

/** Minutes to set up after what ran before. Parts add: new core and new wrap is base + core + wrap. */
export interface ChangeMinutes {
  readonly base: number;
  readonly core: number;
  readonly wrap: number;
  readonly alloy: number;
  readonly length: number;
}

export interface ChangeScrap {
  readonly base: number;
  readonly core: number;
  readonly wrap: number;
  readonly alloy: number;
}

interface Winder extends Station {
  readonly kind: 'winder';
  /** What is turned to move the diameter; left out where the shop has not written it down. */
  readonly knob?: KnobOnRecord;
  /** Of a machine whose wrap tension is set by numbers: what they pull, measured with a hanging scale, numbers ascending. */
  readonly pullTable?: readonly PullRow[];
  readonly spindleRpm: { readonly least: number; readonly most: number };
  /** Fastest that wrap wire may run through the guide. */
  readonly wireSpeedLimitMPerS: number;
  /** Longest free length of core between supports or dampers: what whirls. */
  readonly freeSpanM: number;
  /** Where dampers hold the core still within that span, m from the head's support; none where left out. */
  readonly dampersAtM?: readonly number[];
  readonly coreSizeM: { readonly least: number; readonly most: number };
  readonly wrapDiameterM: { readonly least: number; readonly most: number };
  readonly maxLayers: 1 | 2;
  readonly hexCore: boolean;
  readonly roundCore: boolean;
}

/** A knob in the machine's own unit: newtons, or the numbers of a dial where that is empty. */
export interface KnobOnRecord extends Knob {
  readonly unit: string;
}

/** Spindle and traverse follow numbers that are typed in. */
export interface ServoWinder extends Winder {
  readonly drive: 'servo';
  readonly pitchStepM: number;
  readonly pitchM: { readonly least: number; readonly most: number };
}

/** Traverse follows the spindle through a gearbox with a dial; its table was measured in the shop. */
export interface GearWinder extends Winder {
  readonly drive: 'gear';
  /** Traverse per spindle turn measured at dial settings, dial ascending, at least two rows. */
  readonly dialTable: readonly DialRow[];
  readonly dialStep: number;
}

export interface DialRow {
  readonly dial: number;
  readonly traversePerTurnM: number;
}

/** Cuts plain strings from core wire and puts their ends on; ends the cores of wound strings too. */
export interface CuttingBench extends Station {
  readonly kind: 'bench';
  /** What its core-end machine can do; left out where the shop has not written it down. */
  readonly ends?: EndMaking;
}

export type WindingMachine = ServoWinder | GearWinder;
export type Machine = WindingMachine | CuttingBench;
