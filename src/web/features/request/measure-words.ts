import type { ChosenSet, GivenUp, SetMeasure } from '../../../core/sets/index.js';
import { formatFraction } from '../../../core/units/index.js';
import type { REQUESTS_WORDS } from '../../words/requests.js';

type Words = Pick<(typeof REQUESTS_WORDS)['en'], 'measures' | 'givenUp' | 'onString'>;

/** What a set is best at of those shown, where they differ in it at all. */
export const bestAtInWords = (set: ChosenSet, shown: readonly ChosenSet[], words: Words): readonly string[] =>
  set.bestAt
    .filter((measure) => shown.some((other) => other.givesUp.some((given) => given.in === measure)))
    .map((measure) => words.measures[measure]);

/** What a set gives up against the best of those shown. */
export function givenUpInWords({ in: measure, value, bestOfShown, position }: GivenUp, words: Words): string {
  const figure = COUNTED.has(measure) ? String : (share: number) => formatFraction(share, 1);
  const said = words.givenUp[measure](figure(value), figure(bestOfShown));
  return position === undefined ? said : words.onString(said, position);
}

const COUNTED: ReadonlySet<SetMeasure> = new Set(['to-wind', 'new-recipes', 'extra-wires']);
