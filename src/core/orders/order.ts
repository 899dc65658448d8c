import type { CalendarDate } from '../foundation/index.js';
import type { GaugeThou, StringMaterial } from '../recipes/index.js';
import type { Instrument, StringEnd, TargetWish, Tuning } from '../sets/index.js';

/** One line of the orders file, read and understood, not yet resolved to strings. */
export interface OrderLine {
  /** Where it stood: line number in the file, counted from 1, heading included. */
  readonly line: number;
  readonly orderId: string;
  readonly player: string;
  readonly quantity: number;
  readonly due: CalendarDate;
  readonly note: string;
  readonly wanted: WantedSet;
}

export type WantedSet =
  | {
      readonly kind: 'stock';
      readonly setName: string;
      /** Told beside the name: the set must have them. */
      readonly material?: StringMaterial;
      readonly end?: StringEnd;
    }
  | {
      readonly kind: 'custom';
      readonly strings: readonly WantedString[];
      readonly material: StringMaterial;
      readonly end: StringEnd;
      /** Left out where no instrument and no scale is told. */
      readonly longestScaleM?: number;
    }
  | { readonly kind: 'request'; readonly request: PlayerRequest };

/** A gauge asked for by number; whether plain or wound may be left to the shop's rule. */
export interface WantedString {
  readonly gaugeThou: GaugeThou;
  readonly kind?: 'plain' | 'wound';
}

/** A player's wish before it is a set. */
export interface PlayerRequest {
  readonly instrument: Instrument;
  readonly tuning: Tuning;
  /** True where octaves were missing and the nearest to the usual ones were taken. */
  readonly octavesAssumed: boolean;
  readonly material: StringMaterial;
  readonly end: StringEnd;
  readonly reference?: ReferenceSet;
  readonly wishes: Wishes;
}

/** The set a player likes, with the instrument and tuning it is liked on. */
export interface ReferenceSet {
  readonly strings: readonly WantedString[];
  readonly material: StringMaterial;
  readonly instrument: Instrument;
  readonly tuning: Tuning;
}

/** Pulls aimed at, and what must stand whatever they say. */
export interface Wishes extends TargetWish {
  /** Positions (1 = treble) whose string is given. */
  readonly pins?: readonly { readonly position: number; readonly string: WantedString }[];
  readonly woundThird?: boolean;
}
