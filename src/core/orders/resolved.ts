import type { CalendarDate, Result } from '../foundation/index.js';
import type { StringSpec } from '../sets/index.js';

/** An order line turned into strings, each with the recipe that makes it. */
export interface ResolvedOrder {
  readonly line: number;
  readonly orderId: string;
  readonly player: string;
  readonly quantity: number;
  readonly due: CalendarDate;
  readonly note: string;
  readonly kind: 'stock' | 'custom' | 'request';
  readonly setName: string;
  readonly strings: readonly ResolvedString[];
  /** What the player should be told: see `contract` for the words. */
  readonly warnings: readonly OrderWarning[];
}

export interface ResolvedString {
  readonly position: number;
  readonly spec: StringSpec;
  readonly stringKey: string;
  readonly recipeId: string;
  /** Requests know where the string will sound. */
  readonly sounding?: {
    readonly speakingLengthM: number;
    readonly frequencyHz: number;
    readonly tensionN: number;
    /** Left out where the wire's strength is not known. */
    readonly stressShare?: number;
    readonly wishedTensionN: number;
  };
}

export type OrderWarning =
  | { readonly code: 'neck-load'; readonly totalN: number; readonly referenceN: number }
  | { readonly code: 'octaves-assumed'; readonly tuning: string }
  | { readonly code: 'slack'; readonly position: number; readonly tensionN: number; readonly leastN: number }
  | { readonly code: 'near-strength'; readonly position: number; readonly stressShare: number };

/** What is wrong with a line: where it stands, what was read, and facts enough to say how to mend it. */
export interface OrderFault {
  readonly line: number;
  /** Heading of the column as the file has it; left out where the fault is of the whole line. */
  readonly column?: string;
  readonly orderId?: string;
  /** What the cell held. */
  readonly read?: string;
  readonly code: OrderFaultCode;
  readonly facts: Readonly<Record<string, string | number | readonly string[] | readonly number[]>>;
}

export type OrderFaultCode =
  | 'order.cells-too-many'
  | 'order.quote-open'
  | 'order.cell-empty'
  | 'order.cell-unreadable'
  | 'order.cell-ambiguous'
  | 'order.quantity-out-of-range'
  | 'order.duplicate'
  | 'order.nothing-wanted'
  | 'order.more-than-one-wish'
  | 'order.cell-unheeded'
  | 'order.set-unknown'
  | 'order.material-unknown'
  | 'order.instrument-unknown'
  | 'order.tuning-unreadable'
  | 'order.strings-do-not-match'
  | 'order.recipe-missing'
  | 'order.pitch-unreachable'
  | 'order.no-set-fits'
  | 'order.machine-missing'
  | 'order.wire-missing';

export type Resolution = Result<ResolvedOrder, readonly OrderFault[]>;
