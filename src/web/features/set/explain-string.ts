import type { RecipeState } from '../../../core/recipes/index.js';
import type { Explanation } from '../../parts/explained.js';
import type { Figures } from '../../sight/figures.js';
import type { SETS_WORDS } from '../../words/sets.js';

type How = (typeof SETS_WORDS)['en']['how'];

/** What the figures of a sounding string come from. */
export interface StringTold {
  readonly linearDensityKgPerM: number;
  readonly speakingLengthM: number;
  readonly frequencyHz: number;
  readonly tensionN: number;
  readonly state: RecipeState;
}

interface Teller {
  readonly words: How;
  readonly figures: Figures;
}

/** How a string's figures are known, each for the part that shows it. */
export function explainPull(
  { linearDensityKgPerM, speakingLengthM, frequencyHz, state }: Omit<StringTold, 'tensionN'>,
  { words, figures }: Teller,
): Explanation {
  return {
    what: words.pull,
    formula: 'T = µ (2 L f)²',
    inputs: [
      { name: words.mu, value: figures.unitWeight(linearDensityKgPerM) },
      { name: words.length, value: figures.length(speakingLengthM) },
      { name: words.frequency, value: words.hertz(figures.number(frequencyHz, 2)) },
    ],
    source: words[state],
  };
}

export function explainStress(
  { tensionN, breakingLoadN }: Pick<StringTold, 'tensionN'> & { readonly breakingLoadN: number | undefined },
  { words, figures }: Teller,
): Explanation {
  return {
    what: words.stress,
    formula: 'T / F',
    inputs: [
      { name: words.pullIn, value: figures.pull(tensionN) },
      ...(breakingLoadN === undefined ? [] : [{ name: words.breaking, value: figures.pull(breakingLoadN) }]),
    ],
    source: words.strength,
  };
}

export const explainWeight = ({ state }: Pick<StringTold, 'state'>, { words }: Teller): Explanation => ({
  what: words.weight,
  source: words[state],
});

export const explainInharmonicity = (
  { state }: Pick<StringTold, 'state'>,
  { words }: Teller,
): Explanation => ({
  what: words.inharmonicity,
  formula: 'B = π² E I / (T L²)',
  source: `${words.stiff} ${words[state]}`,
});

export const explainBend = ({ state }: Pick<StringTold, 'state'>, { words }: Teller): Explanation => ({
  what: words.bend,
  source: `${words.bendSource} ${words[state]}`,
});

/** The load of a neck, with what it is held against where it is held against anything. */
export const explainLoad = (
  { strings, referenceN }: { readonly strings: number; readonly referenceN?: number | undefined },
  { words, figures }: Teller,
): Explanation => ({
  what: words.load,
  formula: 'Σ T',
  inputs: [
    { name: words.count, value: figures.number(strings) },
    ...(referenceN === undefined ? [] : [{ name: words.wished, value: figures.pull(referenceN) }]),
  ],
  source: words.sum,
});
