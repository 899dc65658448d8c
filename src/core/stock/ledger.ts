/** The form of an account's name: what it is, a slash, and which one. `supplier`, `customer` and `made` stand alone. */
export type Account =
  | 'supplier'
  | 'customer'
  | 'made'
  | 'wound-in'
  | `spool/${string}`
  | `run/${string}`
  | `bin/${string}`
  | `order/${string}`
  | `pack/${string}`
  | `scrap/${string}`
  | `count-difference/${string}`;

/** What is moved. Wire is kept twice, by weight and by length. */
export type Item =
  | `wire/${string}`
  | `string/${string}`
  | `set/${string}`
  | `end/${string}`
  | `pack/${string}`;

export type Unit = 'mg' | 'mm' | 'pieces';

/** One side of a movement. Quantities are whole numbers of the unit, so that sums are exact. */
export interface Entry {
  readonly account: Account;
  readonly item: Item;
  /** Spool's or string lot's id; empty where lots are not told apart. */
  readonly lot: string;
  readonly unit: Unit;
  /** What comes to the account; negative where it leaves. */
  readonly quantity: number;
}

/** Something moved from account to account: per item, lot and unit the entries sum to zero. */
export interface Movement {
  /** What happened: `receive`, `use`, `make`, `scrap`, `move`, `pick`, `seal`, `ship`, `count`, `correct`. */
  readonly what: string;
  /** Why, for corrections and scrap; empty else. */
  readonly reason: string;
  /** The record it belongs to. */
  readonly ofKind: string;
  readonly ofId: string;
  readonly entries: readonly Entry[];
}

/** What lies in an account: one item of one lot in one unit. */
export interface Balance {
  readonly account: Account;
  readonly item: Item;
  readonly lot: string;
  readonly unit: Unit;
  readonly quantity: number;
}
