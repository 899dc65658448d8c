import type { AlloyId, StrengthTableId } from '../materials/index.js';
import type { Estimate } from '../numeric/index.js';

/** Wire that carries the pull: the whole of a plain string, the core of a wound one. */
export interface CoreWire {
  readonly shape: 'round' | 'hex';
  /** Diameter of a round wire; distance across flats of a hexagon. */
  readonly sizeM: number;
  readonly alloy: AlloyId;
  /** The standard whose table gives the minimum tensile strength; the spool's certificate overrides it. */
  readonly strengthTable: StrengthTableId;
  /** Minimum tensile strength printed on the spool's certificate, where there is one. */
  readonly certifiedStrengthPa?: number;
}

/** One layer of wrap, wound in turns that touch (gap 0) or stand apart. */
export interface WrapLayer {
  /** Diameter of the wire before winding; for rolled wrap, of the round wire it was rolled from. */
  readonly wireDiameterM: number;
  readonly alloy: AlloyId;
  /** Rolled-flat wrap: its thickness. Left out for round wire. */
  readonly rolledThicknessM?: number;
  /** How far the wrap pitch exceeds the pitch of touching turns, as a fraction >= 0: p = p_min (1 + gap). */
  readonly gap: number;
}

export interface PlainConstruction {
  readonly kind: 'plain';
  readonly wire: CoreWire & { readonly shape: 'round' };
}

export interface WoundConstruction {
  readonly kind: 'wound';
  readonly core: CoreWire;
  /** From the core outwards: one layer or two. */
  readonly layers: readonly [WrapLayer] | readonly [WrapLayer, WrapLayer];
}

export type Construction = PlainConstruction | WoundConstruction;

/**
 * How wrap sits on core in this shop: the parameters that geometry leaves open. The prior stands in until
 * the shop's own strings have been measured. All are pure numbers.
 */
export interface SeatModel {
  /** e_m: seat diameter for MASS on a hexagon, as a multiple of the distance across flats; 1 to 2/sqrt(3). */
  readonly massSeat: Estimate;
  /** e_d: seat for the micrometer's LARGEST reading on a hexagon, as a multiple of the distance across flats. */
  readonly caliperSeat: Estimate;
  /** k_f: height of a wound wrap over its wire diameter; 1 is unflattened, less is flattened under wrap tension. */
  readonly flattening: Estimate;
  /** Share of the wrap's section that helps to carry stretch. */
  readonly axialShare: Estimate;
  /** Share of the wrap's second moment that adds to bending stiffness. */
  readonly bendingShare: Estimate;
  /**
   * How much further apart the turns stand than the recipe says: p = p_min (1 + gap) (1 + extraGap). What wrap of
   * another density weighs shows as this too. None where left out.
   */
  readonly extraGap?: Estimate;
  /**
   * Where the figures were learned together and so err together: correlations of massSeat, caliperSeat, flattening,
   * extraGap and axialShare, row by row below the diagonal (10 numbers). Left out: each errs by itself.
   */
  readonly correlations?: readonly number[];
  /** Whether this is the prior alone or was learned from measured strings. */
  readonly state: 'predicted' | 'calibrated';
  /** Families of strings of which the shop has learned more than that; they stand in its place. */
  readonly families?: readonly FamilySeat[];
}

/** Strings whose wrap sits alike: same shape of core, same alloy of the outermost wrap, wrap wire of like size. */
export interface SeatFamily {
  readonly coreShape: CoreWire['shape'];
  readonly wrapAlloy: AlloyId;
  readonly wrapBand: WrapBand;
}

/** How thick the outermost wrap wire is. */
export type WrapBand = 'thin' | 'middle' | 'thick';

/** How wrap sits on core in the strings of one family, of all machines together or of one. */
export interface FamilySeat extends Omit<SeatModel, 'families'> {
  readonly family: SeatFamily;
  /** Left out: as the shop's machines make it, whichever does. */
  readonly machineId?: string;
  /** Measured strings of this family (and machine) that it was learned from. */
  readonly strings: number;
}
