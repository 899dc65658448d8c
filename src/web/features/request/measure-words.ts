import type { ChosenSet, GivenUp, SetMeasure } from '../../../core/sets/index.js';
import { formatFraction } from '../../../core/units/index.js';

const BEST_AT: Readonly<Record<SetMeasure, string>> = {
  pull: 'nearest to the pulls wished',
  step: 'smoothest from string to string',
  bend: 'nearest to the bends wished',
  strength: 'furthest from breaking',
  'to-wind': 'least to wind',
  'new-recipes': 'fewest new recipes',
  'extra-wires': 'fewest new wires',
};

/** What a set is best at of those shown, where they differ in it at all. */
export const bestAtInWords = (set: ChosenSet, shown: readonly ChosenSet[]): readonly string[] =>
  set.bestAt
    .filter((measure) => shown.some((other) => other.givesUp.some((given) => given.in === measure)))
    .map((measure) => BEST_AT[measure]);

/** What a set gives up against the best of those shown. */
export function givenUpInWords({ in: measure, value, bestOfShown, position }: GivenUp): string {
  const at = position === undefined ? '' : ` (string ${position})`;
  const against = (words: string) => `${words}${at}; best ${formatFraction(bestOfShown, 1)}`;
  switch (measure) {
    case 'pull':
      return against(`a pull up to ${formatFraction(value, 1)} off`);
    case 'step':
      return against(`a step of pull up to ${formatFraction(value, 1)} off`);
    case 'bend':
      return against(`a bend up to ${formatFraction(value, 1)} off`);
    case 'strength':
      return against(`stress up to ${formatFraction(value, 1)} of strength`);
    case 'to-wind':
      return `${value} to wind; best ${bestOfShown}`;
    case 'new-recipes':
      return `${value} new recipes; best ${bestOfShown}`;
    case 'extra-wires':
      return `${value} new wires; best ${bestOfShown}`;
  }
}
