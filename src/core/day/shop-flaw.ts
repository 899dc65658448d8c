/** What in a shop cannot be worked with, or would be worked with wrongly. */
export type ShopFlaw =
  /** `where` names something that the shop does not hold. */
  | {
      readonly kind: 'names-nothing';
      readonly where: string;
      readonly what: NamedThing;
      readonly name: string;
    }
  /** Two of a kind bear one name: which is meant, nobody could tell. */
  | { readonly kind: 'named-twice'; readonly what: NamedThing; readonly name: string }
  /** A recipe has more or fewer wrap wires than layers. */
  | {
      readonly kind: 'wraps-miscounted';
      readonly recipeId: string;
      readonly layers: number;
      readonly wires: number;
    }
  /** A recipe's string is not made of the wire that it names: its weight and strength would be another's. */
  | {
      readonly kind: 'wire-differs';
      readonly recipeId: string;
      readonly wireId: string;
      readonly part: WirePart;
    }
  | { readonly kind: 'limits-crossed'; readonly machineId: string; readonly limits: MachineLimits }
  | { readonly kind: 'dial-table-unusable'; readonly machineId: string }
  | { readonly kind: 'pull-table-unusable'; readonly machineId: string }
  /** A damper stands beyond the free span that it is to hold. */
  | { readonly kind: 'damper-outside-span'; readonly machineId: string }
  /** Work of a day must end by midnight. Minutes after midnight. */
  | { readonly kind: 'day-past-midnight'; readonly machineId: string; readonly endsAtMinute: number };

export type NamedThing =
  | 'wire'
  | 'spool'
  | 'machine'
  | 'recipe'
  | 'bin'
  | 'stock set'
  | 'instrument'
  | 'tuning'
  | 'set-up of machine';

export type WirePart = 'use' | 'shape' | 'size' | 'alloy';

export type MachineLimits = 'gaugesThou' | 'spindleRpm' | 'coreSizeM' | 'wrapDiameterM' | 'pitchM' | 'knob';
