import type { AlloyId, StrengthTableId } from '../materials/index.js';
import type { StringSpec } from '../sets/index.js';

/** A kind of wire the shop buys. */
export interface Wire {
  readonly id: string;
  readonly use: 'core' | 'wrap';
  readonly shape: 'round' | 'hex';
  /** Diameter; across flats of a hexagon. */
  readonly sizeM: number;
  readonly alloy: AlloyId;
  /** Core wire only: the standard its strength is judged by. */
  readonly strengthTable?: StrengthTableId;
  readonly certifiedStrengthPa?: number;
  /** Price in minor units of the shop's money per kilogram. */
  readonly priceMinorPerKg: number;
}

/** A spool on the shelf, by weight. */
export interface Spool {
  readonly id: string;
  readonly wireId: string;
  readonly lot: string;
  readonly netKg: number;
}

/** Finished strings of one kind lying in one bin. */
export interface StringStock {
  readonly spec: StringSpec;
  readonly count: number;
  /** Where it lies; bins are walked in the order of the shop's bin list. */
  readonly binId: string;
  readonly lot: string;
  /** Top the bin up to this many when it falls below; 0 where it is made to order. */
  readonly reorderLevel: number;
}

export interface Bin {
  readonly id: string;
  /** Where along the walk the bin stands: the roll is sorted by it. */
  readonly walkOrder: number;
}
