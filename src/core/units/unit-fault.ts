/** What a parser was asked for; each surface has its own words for it. */
export type ExpectedQuantity = 'gauge' | 'length' | 'force' | 'pitch';

/**
 * Why a text is no quantity. Ambiguous: it has a plausible meaning or several, but to take one would be to guess.
 * Unreadable: it has none. Out of range: it has one that cannot be meant. The text and its readings are facts, so
 * that words can show the mend.
 */
export interface UnitFault {
  readonly code: 'unit.ambiguous' | 'unit.unreadable' | 'unit.out-of-range';
  /** What was read, spaces at its ends taken off. */
  readonly text: string;
  readonly expected: ExpectedQuantity;
  /** What the text could mean. Of an unreadable one, what was perhaps meant: `B` for `H`. */
  readonly readings: readonly UnitReading[];
  /** The unit as it stood in the text, where it is none that `expected` may have: `kg` of `26 kg` as a gauge. */
  readonly wrongUnit?: string;
}

/** One meaning of a text. */
export interface UnitReading {
  readonly value: number;
  /** Unit of `value`: the one that the parser answers in. */
  readonly unit: 'thou' | 'm' | 'N' | 'midi' | 'note-class';
  /** A text that has this meaning and no other. */
  readonly write: string;
  /** Whether the value lies in the range that the parser takes; only then is `write` worth offering. */
  readonly plausible: boolean;
}
