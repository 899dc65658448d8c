/** Strings in a gross: the trade counts in twelve dozen (common practice, no source). */
export const STRINGS_PER_GROSS = 144;

/** Grosses that so many strings make; nine grosses are 1,296 strings (common practice, no source). */
export const grossesFromStrings = (strings: number): number => strings / STRINGS_PER_GROSS;

/** Strings in so many grosses. */
export const stringsFromGrosses = (grosses: number): number => grosses * STRINGS_PER_GROSS;

export interface DailyCapacity {
  readonly strings: number;
  readonly grosses: number;
}

/**
 * What a machine makes in a day of nothing but winding one recipe: whole cycles that fit, times the strings
 * made side by side. Set-ups come off `minutesPerDay` beforehand.
 */
export function dailyCapacity({
  minutesPerDay,
  cycleSeconds,
  positions,
}: {
  readonly minutesPerDay: number;
  readonly cycleSeconds: number;
  readonly positions: number;
}): DailyCapacity {
  const strings = Math.floor((minutesPerDay * 60) / cycleSeconds) * positions;
  return { strings, grosses: grossesFromStrings(strings) };
}
