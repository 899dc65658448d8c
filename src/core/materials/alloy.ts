import type { SourceKey } from './sources.js';

/** How well a figure is founded: read on the page named, worked out from such figures, or recalled and unconfirmed. */
export type Standing = 'printed' | 'derived' | 'memory';

/** A figure of a material with its pedigree. `u` is a standard uncertainty, left out where no source gives one. */
export interface SourcedFigure {
  readonly value: number;
  readonly u?: number;
  readonly standing: Standing;
  readonly sources: readonly SourceKey[];
  readonly note?: string;
}

export type AlloyId =
  | 'music-wire'
  | 'nickel-plated-steel'
  | 'pure-nickel'
  | 'nickel-iron'
  | 'nickel-copper'
  | 'stainless-304'
  | 'stainless-430'
  | 'phosphor-bronze'
  | 'phosphor-bronze-8'
  | 'bronze-80-20'
  | 'brass-70-30'
  | 'aluminium-bronze'
  | 'copper'
  | 'silver-plated-copper'
  | 'silver'
  | 'nylon'
  | 'pvdf';

/** What a dust of the material would carry: the constituents that have a limit in the air of a workplace. */
export type Constituent = 'iron' | 'chromium' | 'nickel' | 'copper' | 'zinc' | 'tin' | 'aluminium' | 'silver';

/** What a wire is made of. Figures hold at 20 °C. */
export interface Alloy {
  readonly id: AlloyId;
  /** What it is, in the words of the trade or of a standard: never a product's name. */
  readonly name: string;
  readonly designation: string;
  readonly densityKgPerM3: SourcedFigure;
  readonly youngsModulusPa: SourcedFigure;
  readonly expansionPerK: SourcedFigure;
  /** Drawn strongly enough for a magnetic pickup: common knowledge, no source (alloy 400 is weakly so near room temperature). */
  readonly magnetic: boolean;
  /** Nickel is a wanted part of it. A trace that the standard merely tolerates shows in `nickelMassShare` alone. */
  readonly containsNickel: boolean;
  /** Least and most nickel by mass; left out where the material can hold none. */
  readonly nickelMassShare?: NickelShare;
  readonly constituents: readonly Constituent[];
  /** Tensile strength bands by temper, Pa. Steel core wire is not here: its strength depends on diameter (see strength). */
  readonly tempers: readonly TemperBand[];
}

export interface NickelShare {
  readonly least: number;
  readonly most: number;
  readonly standing: Standing;
  readonly sources: readonly SourceKey[];
}

export interface TemperBand {
  readonly temper: string;
  readonly form: 'wire' | 'strip' | 'bulk' | 'filament';
  readonly minimumPa: number;
  readonly maximumPa?: number;
  /** Holds above this diameter (exclusive) ... */
  readonly aboveDiameterM?: number;
  /** ... and up to this one (inclusive). */
  readonly upToDiameterM?: number;
  readonly standing: Standing;
  readonly sources: readonly SourceKey[];
}
