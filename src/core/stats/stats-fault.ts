/** Why a figure cannot be had from the readings at hand. */
export type StatsFault =
  /** Fewer readings, groups or counts than the method can stand on. */
  | { readonly code: 'stats.too-few'; readonly given: number; readonly needed: number }
  /** All readings are the same: nothing can be measured by their spread. */
  | { readonly code: 'stats.no-spread' }
  /** The method wants groups of one size, or the same trials in every cell. */
  | { readonly code: 'stats.unequal-groups' }
  /** The lower limit is not below the upper one, or neither is given. */
  | { readonly code: 'stats.limits-unusable' }
  /** A count or size is negative, not whole, or more than there can be. */
  | { readonly code: 'stats.count-impossible' }
  /** Second check caught as many as the first or more: no number of escapes follows. */
  | { readonly code: 'stats.second-caught-more'; readonly first: number; readonly second: number }
  /** No plan within the sizes allowed meets what was asked. */
  | { readonly code: 'stats.no-plan'; readonly largestSize: number };

export const tooFew = (given: number, needed: number): StatsFault => ({
  code: 'stats.too-few',
  given,
  needed,
});
